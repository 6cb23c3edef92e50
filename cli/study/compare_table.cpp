#include "cli/study/compare_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>
#include <set>

#include "cli/read/keys.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "cli/study/answer_names.h"

namespace drawwell {
namespace {

bool failed(const Row& row) {
    return !row.done || !row.error.empty();
}

/// How a row's draw ranks: 0 without smoke, 1 with, 2 it could not be judged, 3 it does not draw,
/// 4 no answer.
int draw_rank(const Row& row) {
    if (failed(row)) return 4;
    const std::optional<double> draws = row.answers.number("draws");
    if (!draws) return 2;
    if (!(*draws > 0)) return 3;
    return row.answers.number("smoke_back_s").value_or(0) > 0 ? 1 : 0;
}

/// The better of two values is the greater here.
double merit(const Row& row, const Headline& headline) {
    const std::optional<double> value = row.answers.number(headline.answer);
    if (!value) return -std::numeric_limits<double>::infinity();
    return headline.better == Better::less ? -*value : *value;
}

/// The best of a column among the stoves that draw, as it is shown; none where all are alike.
std::optional<std::string> best_of(const std::vector<Row>& rows, const Headline& headline) {
    if (headline.better == Better::neither) return {};
    const Row* best = nullptr;
    std::set<std::string> seen;
    for (const Row& row : rows) {
        if (draw_rank(row) > 1 || !row.answers.number(headline.answer)) continue;
        seen.insert(shown(row.answers, headline));
        if (!best || merit(row, headline) > merit(*best, headline)) best = &row;
    }
    if (seen.size() < 2) return {};
    return shown(best->answers, headline);
}

/// Width on a terminal: letters, not bytes.
std::size_t width_of(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

/// Cells in columns, the first ones to the left and the others to the right.
class Cells {
  public:
    explicit Cells(std::size_t left) : left_(left) {}
    void add(std::vector<std::string> row) { rows_.push_back(std::move(row)); }
    void put_on(Page& page) const {
        std::vector<std::size_t> width;
        for (const auto& row : rows_)
            for (std::size_t c = 0; c < row.size(); ++c) {
                if (c >= width.size()) width.push_back(0);
                width[c] = std::max(width[c], width_of(row[c]));
            }
        // What does not fit beside the first columns comes below, with them again.
        for (std::size_t from = left_; from < width.size();) {
            std::size_t to = from, wide = 1;
            for (std::size_t c = 0; c < left_; ++c) wide += width[c] + 2;
            while (to < width.size() && (to == from || wide + width[to] < page_width))
                wide += width[to++] + 1;
            if (from > left_) page.line("");
            put(page, width, from, to);
            from = to;
        }
    }

  private:
    void put(Page& page, const std::vector<std::size_t>& width, std::size_t from,
             std::size_t to) const {
        for (const auto& row : rows_) {
            std::string line = " ";
            for (std::size_t c = 0; c < std::min(row.size(), to); ++c) {
                if (c >= left_ && c < from) continue;
                const std::string fill(width[c] - width_of(row[c]), ' ');
                line += " " + (c < left_ ? row[c] + fill : fill + row[c]) + (c < left_ ? " " : "");
            }
            line.erase(line.find_last_not_of(' ') + 1);
            page.line(line);
        }
    }

    std::size_t left_;
    std::vector<std::vector<std::string>> rows_;
};

/// What a key is set to, as it was typed or in US units.
std::string setting_text(const std::string& name, const std::string& value, UnitSystem units) {
    const Key* key = find_key(name).key;
    if (units == UnitSystem::metric || !key || key->kind != Kind::quantity) return value;
    return show_setting(parse_quantity(value, key->quantity), key->quantity, units);
}

/// What tells rows apart: the file if there are several, and every key that varies.
struct Labels {
    bool files = false;
    UnitSystem units = UnitSystem::metric;
    std::vector<std::string> keys;

    Labels(const Study& study, UnitSystem system)
        : files(study.files.size() > 1), units(system), keys(varied_keys(study)) {}
    std::size_t size() const { return keys.size() + (files || keys.empty() ? 1 : 0); }

    std::vector<std::string> head() const {
        std::vector<std::string> cells;
        if (files || keys.empty()) cells.emplace_back("stove");
        cells.insert(cells.end(), keys.begin(), keys.end());
        return cells;
    }
    std::vector<std::string> of(const Study& study, std::size_t row) const {
        std::vector<std::string> cells;
        if (files || keys.empty()) cells.push_back(study.file_of(row).name);
        for (const std::string& key : keys) {
            const std::string value = setting_of(study, row, key);
            cells.push_back(value.empty() ? "as filed" : setting_text(key, value, units));
        }
        return cells;
    }
};

std::vector<std::string> with(std::vector<std::string> cells, std::vector<std::string> more) {
    cells.insert(cells.end(), more.begin(), more.end());
    return cells;
}

std::string difference(const Row& row, const Row& base, const Headline& headline) {
    const auto here = row.answers.number(headline.answer),
               there = base.answers.number(headline.answer);
    const Answer* answer = row.answers.find(headline.answer);
    if (!here || !there || (answer && std::holds_alternative<bool>(*answer)))
        return shown(row.answers, headline);
    const std::string text = show_number(headline.scale * (*here - *there), headline.decimals);
    return text.front() == '-' ? text : "+" + text;
}

/// What stands over the columns; behind each is room for a mark.
void put_heads(Cells& grid, const CompareLook& look, const Labels& labels) {
    std::vector<std::string> headings, units;
    for (const Headline& headline : look.answers) {
        headings.push_back(std::string(headline.heading) + " ");
        units.push_back(std::string(headline.unit) + " ");
    }
    grid.add(with(labels.head(), headings));
    grid.add(with(std::vector<std::string>(labels.size()), units));
}

void put_differences(Page& page, const Study& study, const std::vector<Row>& rows,
                     const std::vector<std::size_t>& order, const CompareLook& look,
                     const Labels& labels) {
    page.heading("Against the stove as filed");
    Cells grid(labels.size());
    put_heads(grid, look, labels);
    for (const std::size_t i : order) {
        if (i == 0 || failed(rows[i])) continue;
        std::vector<std::string> cells;
        for (const Headline& headline : look.answers)
            cells.push_back(difference(rows[i], rows[0], headline) + " ");
        grid.add(with(labels.of(study, i), std::move(cells)));
    }
    grid.put_on(page);
}

}  // namespace

std::vector<std::size_t> sorted_rows(const std::vector<Row>& rows, const CompareLook& look) {
    std::vector<std::size_t> order(rows.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    if (look.as_given) return order;
    const Headline by = headline_of(look.sort);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const int rank_a = draw_rank(rows[a]), rank_b = draw_rank(rows[b]);
        if (rank_a != rank_b) return rank_a < rank_b;
        return rank_a < 4 && merit(rows[a], by) > merit(rows[b], by);
    });
    return order;
}

std::string compare_table(const Study& study, const std::vector<Row>& rows,
                          const CompareLook& look) {
    Page page(look.colour);
    const Labels labels(study, look.units);
    const std::vector<std::size_t> order = sorted_rows(rows, look);

    std::vector<std::optional<std::string>> best;
    for (const Headline& headline : look.answers) best.push_back(best_of(rows, headline));
    Cells grid(labels.size());
    put_heads(grid, look, labels);
    for (const std::size_t i : order) {
        std::vector<std::string> cells;
        if (failed(rows[i])) {
            cells.emplace_back(rows[i].done ? "failed" : "not done");
        } else {
            for (std::size_t a = 0; a < look.answers.size(); ++a) {
                const std::string text = shown(rows[i].answers, look.answers[a]);
                cells.push_back(text + (draw_rank(rows[i]) < 2 && best[a] == text ? "*" : " "));
            }
        }
        grid.add(with(labels.of(study, i), std::move(cells)));
        if (!look.below || failed(rows[i])) continue;
        std::vector<std::string> under;
        for (const Headline& headline : look.answers)
            under.push_back(look.below(i, headline) + " ");
        grid.add(with(std::vector<std::string>(labels.size()), std::move(under)));
    }
    grid.put_on(page);
    if (std::any_of(best.begin(), best.end(), [](const auto& each) { return each.has_value(); })) {
        page.line("");
        page.paragraph("* the best of its column among the stoves that draw");
    }
    if (std::any_of(rows.begin(), rows.end(), [](const Row& row) { return draw_rank(row) == 2; })) {
        page.line("");
        page.paragraph(
            "too short: nothing burned for long enough to judge whether it draws, which shows from "
            "five minutes after lighting on");
    }
    if (look.base && rows.size() > 1 && !failed(rows[0]))
        put_differences(page, study, rows, order, look, labels);

    for (std::size_t i = 0; i < rows.size(); ++i)
        if (!rows[i].error.empty()) {
            std::string name;
            for (const std::string& cell : labels.of(study, i))
                name += (name.empty() ? "" : ", ") + cell;
            page.heading("Failed: " + name);
            page.problems(rows[i].error);
        }
    if (!labels.keys.empty()) page.heading("What varies");
    for (const std::string& key : labels.keys)
        page.point(key + ": " + std::string(find_key(key).key->help));
    for (const Follow& follow : study.follows)
        page.point(follow.key + " follows: " + follow.formula);
    return page.text();
}

}  // namespace drawwell
