#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/report/chart_labels.h"

namespace drawwell {

/// What an axis shows: [least, most], widened if that is empty or not finite.
struct ChartAxis {
    std::string label;  // with its unit
    double least = 0, most = 1;
};

/// How a line is drawn, a CSS colour and its dashes.
struct ChartStyle {
    std::string_view colour;
    bool dashed = false;
};

enum class ChartMark { filled, hollow, ring, diamond, square };

/// A figure over two axes as SVG of 800 by 500 pixels, with real text on white. Values that are
/// not finite are left out, those beyond the axes cut off. Labels look for a free place by
/// themselves. A key to lines, marks and bands stands above the plot, heights in the margin on
/// its right.
class Chart {
  public:
    Chart(std::string_view title, std::string_view description, const ChartAxis& x,
          const ChartAxis& y);

    /// A stretch of the x axis, from `from` to `to` in either order.
    void band(double from, double to, std::string_view colour);
    void upright_rule(double x);
    void level_rule(double y);
    /// Parted where a point is not finite.
    void line(const std::vector<ChartPoint>& points, ChartStyle style);
    void mark(ChartPoint at, ChartMark shape, std::string_view colour);
    /// A text beside a point, in the first free place near it.
    void label(ChartPoint at, std::string_view text, std::string_view colour);
    /// What the plot shows left and right of an x, written along its upper edge; left out where
    /// there is no room.
    void sides(double x, std::string_view left, std::string_view right);
    /// An arrow from nothing to the height of a point, in the right margin, with its text in lines.
    void height(ChartPoint at, const std::vector<std::string>& lines, std::string_view colour);

    void key_line(ChartStyle style, std::string_view text);
    void key_mark(ChartMark shape, std::string_view colour, std::string_view text);
    void key_band(std::string_view colour, std::string_view text);

    /// The figure; `y` [pixels]: how far down it stands in one that holds it.
    std::string svg(double y = 0) const;

  private:
    struct Label {
        ChartPoint at;  // pixels
        std::string text, colour;
    };

    double pixel_x(double x) const;
    double pixel_y(double y) const;
    bool inside(ChartPoint at) const;
    void draw_axes(std::string_view x_label, std::string_view y_label);
    void key_text(double swatch, std::string_view text);
    double key_start(double width);
    std::string placed_labels() const;

    std::string title_, description_;
    double x_least_, x_most_, y_least_, y_most_;
    std::string behind_, lines_, marks_, around_;
    ChartLabels places_;
    std::vector<Label> labels_;
    double key_x_, key_y_;
    double margin_x_, margin_y_;
};

/// Figures one below the other as one SVG.
std::string stacked_svg(const std::vector<Chart>& charts);

}  // namespace drawwell
