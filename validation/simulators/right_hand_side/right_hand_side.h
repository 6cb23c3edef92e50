#pragma once

#include <cstddef>

/// drawwell's own dy/dt = f(t, y) of a whole stove, for integrators of others. Loads and what else
/// changes at once stand at stops: an integrator begins a stretch there and lands on its end. The
/// branch of the flow that the present state belongs to is kept inside and moves only where
/// `drawwell_accepted` is called, so that f is pure in between.
extern "C" {

struct DrawwellRun;

/// A stove file to be burned until `end` [s]; null, with the reason on stderr, if it can't be.
DrawwellRun* drawwell_open(const char* stove_file, double end);
void drawwell_close(DrawwellRun* run);

/// How long the state is: the enthalpy [J] of every solid, then the fuel.
std::size_t drawwell_size(const DrawwellRun* run);
/// The name of a quantity that `drawwell_show` gives; null beyond the last.
const char* drawwell_name(const DrawwellRun* run, std::size_t quantity);
void drawwell_initial(const DrawwellRun* run, double* state);
/// What counts as one unit of each state for an absolute tolerance: a kelvin, or the fuel's scale.
void drawwell_unit(const DrawwellRun* run, double* unit);

/// Does to the state what happens at a stop [s], 0 being the first, and settles the flow there.
/// The next stop, at last the end; negative where there is no flow.
double drawwell_begin(DrawwellRun* run, double time, double* state);
/// f. Not zero where no flow balances the draw: the trial led nowhere.
int drawwell_rates(DrawwellRun* run, double time, const double* state, double* rate);

/// How often f was worked out, and closer to zero than what [Pa] its flows are to be balanced.
std::size_t drawwell_evaluations(const DrawwellRun* run);
void drawwell_balance_within(DrawwellRun* run, double pressure);

/// What an integrator must do after a step of its own.
enum DrawwellVerdict {
    drawwell_go_on = 0,
    drawwell_begin_anew = 1,  // f has another branch from here
    drawwell_too_long = 2     // the branch changed on the way: take the step again, shorter
};
/// The rules of drawwell's own stepper: where the flow jumps or turns, short steps locate it.
DrawwellVerdict drawwell_accepted(DrawwellRun* run, double time, double step, const double* state);

/// Temperature [K] of every solid, the fuel, the flow [kg/s] by each inlet, and the heat [W] into
/// all solids at that instant, each by its size, by which one knows the right-hand side again.
void drawwell_show(DrawwellRun* run, double time, const double* state, double* quantity);
}
