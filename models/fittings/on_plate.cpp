#include "models/fittings/on_plate.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <optional>
#include <utility>

#include "models/components/layered_wall.h"
#include "models/fittings/reading.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

constexpr double flat_gap = 500, ordinary_gap = 250, dented_gap = 75;  // [W/(m2 K)]
constexpr double touching = 1e-6;                                      // [m] counts as beside

/// One thing on the plate.
struct OnPlate {
    std::string table;  // `pot.kettle`
    Disc disc;
    Steps there{1.0};
};

std::vector<OnPlate> things_on_plate(const Stove& stove) {
    std::vector<OnPlate> all;
    for (const Fitting& fitting : stove.fittings)
        std::visit(
            [&](const auto& part) {
                if constexpr (requires { part.off_centre; })
                    all.push_back({std::string(part.table) + "." + part.name,
                                   {part.diameter / 2, part.off_centre},
                                   part.there()});
            },
            fitting);
    return all;
}

/// Angle [rad] that two discs must keep round the common centre; nothing: none is enough.
std::optional<double> least_angle(const Disc& a, const Disc& b) {
    const double apart = a.radius + b.radius - touching;
    if (a.off_centre + b.off_centre < apart) return {};
    if (std::abs(a.off_centre - b.off_centre) >= apart) return 0;
    return std::acos(
        std::clamp((a.off_centre * a.off_centre + b.off_centre * b.off_centre - apart * apart) /
                       (2 * a.off_centre * b.off_centre),
                   -1.0, 1.0));
}

/// Whether discs fit if they stand in this order round the centre.
bool fit_in_order(const std::vector<Disc>& discs, const std::vector<std::size_t>& order) {
    std::vector<double> angle(order.size());
    for (std::size_t k = 0; k < order.size(); ++k)
        for (std::size_t j = 0; j < k; ++j) {
            const auto least = least_angle(discs[order[j]], discs[order[k]]);
            if (!least) return false;
            angle[k] = std::max(angle[k], angle[j] + *least);
        }
    for (std::size_t k = 0; k < order.size(); ++k)
        for (std::size_t j = 0; j < k; ++j)
            if (angle[k] - angle[j] > 2 * pi - *least_angle(discs[order[j]], discs[order[k]]))
                return false;
    return true;
}

}  // namespace

double share_under(double inner, double outer, double disc_radius, double off_centre) {
    // Arcs of the ring under the disc, midpoint rule over its width.
    constexpr int parts = 64;
    double under = 0, whole = 0;
    for (int i = 0; i < parts; ++i) {
        const double r = inner + (outer - inner) * (i + 0.5) / parts;
        const double cosine = off_centre > 0
                                  ? (r * r + off_centre * off_centre - disc_radius * disc_radius) /
                                        (2 * r * off_centre)
                                  : (r < disc_radius ? -1.0 : 1.0);
        under += r * std::acos(std::clamp(cosine, -1.0, 1.0)) / pi;
        whole += r;
    }
    return under / whole;
}

double gap_conductance(std::string_view bottom) {
    return bottom == "flat" ? flat_gap : bottom == "dented" ? dented_gap : ordinary_gap;
}

std::vector<PlateContact> lay_on_plate(StoveBuilder& builder, const Lying& lying) {
    Layout& layout = builder.layout;
    const std::vector<double>& edge = layout.plate_edge;
    const bool moved = is_moved(lying.there, 1);
    std::vector<PlateContact> contacts;
    OutsideFace under;
    under.name = "plate under " + lying.name;
    OutsideFace& top = outer_face(builder, "plate");
    for (std::size_t i = layout.hole_pot.empty() ? 0 : layout.hole_rings; i + 1 < edge.size();
         ++i) {
        const double share =
            share_under(edge[i], edge[i + 1], lying.outer, lying.off_centre) -
            (lying.inner > 0 ? share_under(edge[i], edge[i + 1], lying.inner, lying.off_centre)
                             : 0);
        const double area = share * pi * (edge[i + 1] * edge[i + 1] - edge[i] * edge[i]);
        if (!(area > 0)) continue;
        const SolidId ring = layout.plate.solids[i];
        contacts.push_back({i, lying.body, lying.conductance * area, lying.there});
        ConductionLink link{.a = ring,
                            .b = lying.body,
                            .shape_a = 1e9,
                            .shape_b = 1e9,
                            .contact = 1 / contacts.back().conductance};
        if (moved) link.share = [there = lying.there](double time, auto) { return there(time); };
        builder.network.links.push_back(std::move(link));
        top.area[i] = std::max(top.area[i] - area, 0.0);
        under.solids.push_back(ring);
        under.area.push_back(area);
    }
    if (moved) {
        under.flux = [bare = top.flux, there = lying.there](
                         double time, std::span<const double> temperature, std::span<double> flux) {
            bare(time, temperature, flux);
            for (double& each : flux) each *= 1 - there(time);
        };
        builder.network.outside.push_back(std::move(under));
    }
    layout.on_plate.insert(layout.on_plate.end(), contacts.begin(), contacts.end());
    return contacts;
}

double heat_by_contact(std::span<const PlateContact> contacts, std::span<const SolidId> rings,
                       const HeatBalance& at) {
    double heat = 0;
    for (const PlateContact& contact : contacts)
        heat +=
            contact.there(at.time()) * contact.conductance *
            (at.temperature()[index(rings[contact.ring])] - at.temperature()[index(contact.body)]);
    return heat;
}

bool fit_side_by_side(const std::vector<Disc>& discs) {
    // What stands in the very middle is beside the others or it is not, however they are turned.
    std::vector<Disc> round;
    for (std::size_t i = 0; i < discs.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j)
            if (!least_angle(discs[i], discs[j])) return false;
        if (discs[i].off_centre > 0) round.push_back(discs[i]);
    }
    if (round.size() < 3) return true;
    constexpr std::size_t tried = 7;  // in every order; more, as the file has them
    std::vector<std::size_t> order(round.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    if (round.size() > tried) return fit_in_order(round, order);
    do {
        if (fit_in_order(round, order)) return true;
    } while (std::next_permutation(order.begin() + 1, order.end()));
    return false;
}

std::vector<FittingProblem> lying_problems(const Stove& stove, const std::string& table,
                                           const Disc& disc, const Steps& there) {
    if (!stove.plate) return {{{"diameter"}, "it needs a plate to stand on: add [plate]"}};
    if (disc.off_centre + disc.radius > stove.plate->diameter / 2 + touching)
        return {{{"off_centre", "diameter"}, "it hangs over the plate's edge"}};
    std::vector<OnPlate> before = things_on_plate(stove);
    before.erase(std::find_if(before.begin(), before.end(),
                              [&](const OnPlate& thing) { return thing.table == table; }),
                 before.end());
    std::vector<double> times = there.time();
    for (const OnPlate& other : before)
        times.insert(times.end(), other.there.time().begin(), other.there.time().end());
    for (const double time : times) {
        if (!(there(time) > 0)) continue;
        std::vector<Disc> discs{disc};
        for (const OnPlate& other : before) {
            if (!(other.there(time) > 0)) continue;
            if (!least_angle(disc, other.disc))
                return {
                    {{"off_centre", "diameter"},
                     "it overlaps " + other.table + ", even with the plate's centre between them"}};
            discs.push_back(other.disc);
        }
        if (!fit_side_by_side(discs))
            return {{{"off_centre", "diameter"},
                     "it finds no room beside what else is on the plate, however they are turned "
                     "about its centre"}};
    }
    return {};
}

Steps on_and_off(const std::vector<double>& put_on, const std::vector<double>& taken_off) {
    std::map<double, double> moves;
    for (const double time : put_on) moves[time] = 1;
    for (const double time : taken_off) moves[time] = 0;
    if (moves.empty()) return Steps(1.0);
    const double first = moves.begin()->second > 0 ? 0.0 : 1.0;
    if (moves.begin()->first > 0) moves[0] = first;
    std::vector<double> time, value;
    for (const auto& [when, there] : moves) {
        time.push_back(when);
        value.push_back(there);
    }
    return Steps(std::move(time), std::move(value));
}

bool take_turns(const std::vector<double>& put_on, const std::vector<double>& taken_off) {
    std::vector<std::pair<double, bool>> moves;
    moves.reserve(put_on.size() + taken_off.size());
    for (const double time : put_on) moves.emplace_back(time, true);
    for (const double time : taken_off) moves.emplace_back(time, false);
    std::sort(moves.begin(), moves.end());
    return std::adjacent_find(moves.begin(), moves.end(), [](const auto& a, const auto& b) {
               return !(a.first < b.first) || a.second == b.second;
           }) == moves.end();
}

}  // namespace drawwell
