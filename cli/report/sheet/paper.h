#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

// A sheet is first a list of lines and texts, then SVG. Everything here is in millimetres on paper,
// from a page's upper left corner, downwards.

struct PaperPoint {
    double x = 0, y = 0;
};

struct PaperBox {
    double left = 0, top = 0, right = 0, bottom = 0;

    double width() const { return right - left; }
    double height() const { return bottom - top; }
};

/// Whether two boxes share more than an edge.
bool overlap(const PaperBox& a, const PaperBox& b);
/// Whether a straight line runs through a box.
bool crosses(PaperPoint from, PaperPoint to, const PaperBox& box);
/// The part of a straight line inside a box; empty, or two points.
std::vector<PaperPoint> clipped(PaperPoint from, PaperPoint to, const PaperBox& box);

/// What a line is for, which decides how it looks.
enum class Pen {
    outline,  // of what is cut
    hidden,   // of what lies behind
    measure,  // dimension lines, and what leads from them to the drawing
    gas,      // the gas's way
    cut,      // full size, to cut along
    fold,     // full size, not to cut along
    frame,    // rules of tables, edges of tiles
};

/// A line from point to point; closed and with a fill, an area.
struct PaperLine {
    std::vector<PaperPoint> points;
    Pen pen = Pen::outline;
    bool closed = false;
    std::string fill = {};  // CSS colour; empty: none
};

enum class PaperAnchor { start, middle, end };

struct PaperText {
    PaperPoint at;  // of its base line
    std::string text;
    double size = 2.6;
    bool bold = false;
    PaperAnchor anchor = PaperAnchor::start;
};

struct PaperPage {
    double width = 0, height = 0;
    std::vector<PaperLine> lines;
    std::vector<PaperText> texts;
};

/// Width of a text, at most: by the letters of DejaVu Sans, the widest of the plain faces that
/// viewers fall back to. (Read from the font's own table; its bold is wider by at most a tenth and
/// a half.)
double paper_width(std::string_view text, double size, bool bold = false);
/// The box a text takes up: from the tops of its capitals to the feet of its p and q.
PaperBox box_of(const PaperText& text);
/// Cut with an ellipsis to a width.
std::string cut_to(std::string_view text, double width, double size, bool bold = false);
/// Broken at blanks into lines of a width; a word longer than that is cut.
std::vector<std::string> lines_of(std::string_view text, double width, double size,
                                  bool bold = false);

/// Points of a circle as a polygon, fine enough for a print at full size.
std::vector<PaperPoint> circle(PaperPoint centre, double radius);
std::vector<PaperPoint> rectangle(const PaperBox& box);

}  // namespace drawwell
