#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/report/svg_text.h"
#include "cli/report/web/moment.h"
#include "solver/results.h"

namespace drawwell {

/// Pieces of a stove's section in millimetres, x to the right, y upwards, gathered as SVG.
class SectionDrawing {
  public:
    SectionDrawing(const Results& results, const Moment& moment)
        : results_(results), moment_(moment) {}

    /// What no column paints: iron, brick, the load.
    void plain(double x0, double y0, double x1, double y1, std::string_view name);
    /// Begins pieces painted by a column; false: the result has it not, or not so many cells.
    bool begin(std::string_view column, std::string_view name, std::size_t cells);
    void piece(std::size_t cell, double x0, double y0, double x1, double y1);
    void piece(std::size_t cell, const std::vector<ChartPoint>& corners);
    void end();
    /// Where gas stands that no column paints.
    void hollow(double x0, double y0, double x1, double y1, std::string_view name);
    /// The outline of what lies before or behind the cut.
    void behind(const std::vector<ChartPoint>& corners, bool closed, std::string_view name);

    const std::string& svg() const { return svg_; }
    double least_x() const { return least_x_; }
    double most_x() const { return most_x_; }
    double least_y() const { return least_y_; }
    double most_y() const { return most_y_; }

  private:
    void reach(double x, double y);

    const Results& results_;
    Moment moment_;
    const Column* column_ = nullptr;
    std::string svg_;
    double least_x_ = 1e9, most_x_ = -1e9, least_y_ = 1e9, most_y_ = -1e9;
};

}  // namespace drawwell
