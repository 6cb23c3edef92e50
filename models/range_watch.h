#pragma once

#include <deque>
#include <string>
#include <vector>

#include "models/build_network.h"
#include "models/range_tally.h"
#include "solver/heat_balance.h"

namespace drawwell {

/// Notes during a burn which laws are used outside their ranges, and what hangs on them: of
/// pressure laws the share of all losses, of heat laws the share of the heat.
class RangeWatch {
  public:
    /// Keeps references to all three.
    RangeWatch(const Stove& stove, const Library& library, const BuiltStove& built);

    /// Looks at an instant; `balance` holds its state, with no flow sought since.
    void sample(double time, const HeatBalance& balance);

    /// What was stretched, heaviest first; `heat_released` [J] in the burn so far.
    std::vector<Stretched> stretched(double heat_released) const;

  private:
    /// A passage's gas cells as the laws see them.
    struct Seen;
    void see_passage(std::size_t passage, const HeatBalance& balance);
    template <class FilmLaw>
    void see_walls(const Seen& seen, FilmLaw film, Answer on);
    void see_losses(const Seen& seen, double free_area);
    void see_fire(const HeatBalance& balance);
    /// Width [m] of a fire, by which its flame is reckoned.
    double fire_width(std::size_t site) const;
    void see_outer_faces(double time, const HeatBalance& balance);
    void see_materials(const HeatBalance& balance);

    const Stove& stove_;
    const BuiltStove& built_;
    RangeTally tally_;

    /// The solids of a part that are of one material, and a limit of it.
    struct Limited {
        const Range* range = nullptr;
        Answer on = Answer::wear;
        std::string where;
        std::vector<std::size_t> solids;
    };
    void limit(const Range* range, Answer on, const std::string& where, std::size_t solid);
    std::deque<Range> material_ranges_;  // addresses stay
    std::vector<Limited> limited_;
    /// An outer face that stands upright or looks up.
    struct OuterLaw {
        std::size_t face = 0;
        const Range* range = nullptr;
        double length = 0;  // [m] of its Rayleigh number
        Answer on = Answer::exit_gas;
    };
    std::vector<OuterLaw> outer_;

    std::vector<double> gas_heat_;  // [W] of each solid, at the present instant
};

}  // namespace drawwell
