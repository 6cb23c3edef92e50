#include "cli/report/draw_table.h"

#include <fmt/format.h>

#include <cmath>
#include <string_view>

#include "cli/read/units.h"
#include "cli/report/cautions.h"
#include "cli/report/draw_answers.h"
#include "cli/report/draw_rows.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "models/judge_draw.h"

namespace drawwell {
namespace {

std::string pascals(double push) {
    return show_number(push, 1) + " Pa";
}

std::string push_text(double push) {
    return (push < 0 ? "at a pull of " : "at a push of ") + pascals(std::abs(push));
}

bool stands_still(double flow) {
    return std::abs(flow) < still_feed;
}

/// "11.2 g/s of air in", "9.0 g/s of smoke out of the feed".
std::string flow_text(double flow) {
    if (stands_still(flow)) return "none, in or out";
    return show_number(to_grams(std::abs(flow)), 1) +
           (flow < 0 ? " g/s of smoke out of the feed" : " g/s of air in");
}

void write_verdict(Page& page, const DrawStudy& study, const DrawAnswers& answers) {
    if (stands_still(study.flow))
        page.verdict("THE GAS STANDS STILL: no air goes in, no smoke comes out.", {});
    else if (study.time < fire_established)
        page.verdict(fmt::format("TOO EARLY TO JUDGE: a fire takes some five minutes to establish "
                                 "itself. At this moment {}.",
                                 study.flow < 0 ? "smoke comes out of the feed" : "air goes in"),
                     {});
    else if (study.flow < 0 && -study.flow < study.given_off)
        page.verdict("SMOKE LEAVES AT BOTH ENDS, by the feed and by the flue.", false);
    else if (study.flow < 0)
        page.verdict("SMOKE COMES OUT OF THE FEED: the draw is turned.", false);
    else if (!answers.short_push)
        page.verdict("IT DRAWS, BUT WITH NOTHING TO SPARE.", false);
    else if (answers.limit_push < thin_reserve)
        page.verdict("It draws, but with little to spare.", false);
    else
        page.verdict("It draws.", true);
}

std::string trickle_text(const DrawAnswers& answers) {
    const auto from = [](const Trickle& trickle) {
        return trickle.when == Trickle::When::already ? std::string("without any push")
                                                      : "from a push of " + pascals(trickle.push);
    };
    const auto matters = [](const Trickle& trickle) {
        return trickle.when == Trickle::When::already || trickle.when == Trickle::When::at_push;
    };
    const bool may = matters(answers.trickle_early);
    const bool does = matters(answers.trickle_late);
    if (may && does && answers.trickle_late.when == Trickle::When::already)
        return "trickles out without any push";
    if (may && does)
        return fmt::format("may trickle out {}, surely does {}", from(answers.trickle_early),
                           from(answers.trickle_late));
    if (may)
        return fmt::format("may trickle out {}; the draw tips over before it surely does",
                           from(answers.trickle_early));
    if (does) return fmt::format("surely trickles out {}", from(answers.trickle_late));
    if (answers.trickle_early.when == Trickle::When::after_turning ||
        answers.trickle_late.when == Trickle::When::after_turning)
        return "does not matter: the draw tips over before any trickles out";
    return "none to reckon with";
}

std::string limit_text(const DrawAnswers& answers) {
    switch (answers.limit) {
        case DrawLimit::short_push:
            return fmt::format("a short push, at {}", pascals(answers.limit_push));
        case DrawLimit::lasting_push:
            return fmt::format("a push that lasts, at {}", pascals(answers.limit_push));
        case DrawLimit::trickle:
            return fmt::format("smoke beside the air, at {}", pascals(answers.limit_push));
        case DrawLimit::none:
            break;
    }
    return "nothing: there is none to spare";
}

void write_spare(Page& page, const DrawStudy& study, const DrawAnswers& answers) {
    page.heading(study.flow <= -still_feed
                     ? "Spare draw, if it drew inward again"
                     : "Spare draw, against wind on the flue or a fan in the room");
    page.row("now", flow_text(study.flow));
    const auto spare = [](std::optional<double> push) { return push ? pascals(*push) : "none"; };
    page.row("a short push", spare(answers.short_push) + ", walls as they are");
    page.row("a push that lasts", spare(answers.lasting_push) + ", walls follow");
    page.row("smoke beside the air", trickle_text(answers));
    page.row("what decides", limit_text(answers));
}

std::string directions_text(const Directions& held, const Directions& following) {
    if (held.inward && held.outward) {
        std::string text = "Two directions are possible: once turned, it stays turned until ";
        text += held.pull_back
                    ? fmt::format("a pull of {} helps the draw", pascals(*held.pull_back))
                    : "something pulls the draw back";
        if (following.outward) return text + ", however long one waits.";
        return text + ", or until the walls have followed: they bring it back by themselves.";
    }
    if (held.inward) {
        std::string text = "Only one direction is possible: pushed over, it comes back by itself";
        if (!following.outward) return text + ".";
        return text + " while the walls are as they are; if they follow, it stays turned.";
    }
    if (held.outward)
        return "Only one direction is possible, and it is the wrong one: smoke out of the feed.";
    return "No steady direction was found without a push.";
}

void write_states(Page& page, std::string_view label, const DrawCurve& curve) {
    bool first = true;
    for (const DrawState& state : curve.states) {
        page.row(first ? label : "", fmt::format("{}, {}", flow_text(state.flow),
                                                 state.stable ? "stays" : "does not stay"));
        first = false;
    }
    if (first) page.row(label, "no steady flow");
}

void write_directions(Page& page, const DrawStudy& study) {
    page.heading("Directions");
    page.paragraph(directions_text(directions_of(study.held), directions_of(study.following)));
    write_states(page, "walls as they are", study.held);
    write_states(page, "walls that follow", study.following);
    std::string spill;
    if (study.held.spill) spill = push_text(study.held.spill->pressure) + ", walls as they are";
    if (study.following.spill)
        spill += fmt::format("{}{}, walls that follow", spill.empty() ? "" : "; ",
                             push_text(study.following.spill->pressure));
    if (!spill.empty()) page.row("feed takes in nothing", spill);
    if (study.given_off > 0)
        page.row("wood gives off",
                 fmt::format("{} g/s; while less than that leaves by the feed, smoke leaves at "
                             "both ends",
                             show_number(to_grams(study.given_off), 1)));
}

void write_curves(Page& page, const DrawStudy& study) {
    page.heading("The push that balances each flow (less than 0: a pull that helps)");
    page.line(fmt::format("  {:>10}  {:>12}  {:>12}", "flow, g/s", "push, Pa", "push, Pa"));
    page.line(fmt::format("  {:>10}  {:>12}  {:>12}", "out < 0", "as they are", "walls follow"));
    const auto push = [](std::optional<double> value) {
        return value ? show_number(*value, 2) : std::string("-");
    };
    for (const DrawRow& row : draw_rows(study))
        page.line(fmt::format("  {:>10}  {:>12}  {:>12}{}{}", show_number(to_grams(row.flow), 2),
                              push(row.held), push(row.following), row.marks.empty() ? "" : "  ",
                              row.marks));
}

}  // namespace

std::string draw_page(const DrawStudy& study, const DrawFrame& frame) {
    const DrawAnswers answers = draw_answers(study);
    Page page(frame.colour);
    page.line(fmt::format("{}{}{} after lighting", frame.title, frame.title.empty() ? "" : ", ",
                          show_duration(study.time)));
    write_verdict(page, study, answers);
    write_spare(page, study, answers);
    write_directions(page, study);
    write_curves(page, study);
    page.heading("Before you light it");
    page.point(standing_cautions().front());
    if (!frame.files.empty()) page.heading("Files");
    for (const auto& [meaning, path] : frame.files)
        page.line(fmt::format("  {:<24}{}", meaning, path.string()));
    return page.text();
}

}  // namespace drawwell
