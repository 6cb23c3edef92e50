// Integrates a stove by SUNDIALS' CVODE, backward differences with a dense Jacobian by differences,
// on drawwell's right-hand side; writes reference.csv to the terminal.

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_version.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "validation/simulators/right_hand_side/right_hand_side.h"

namespace {

int rates(double time, N_Vector y, N_Vector rate, void* run) {
    // A positive answer is one that CVODE recovers from by a shorter step.
    return drawwell_rates(static_cast<DrawwellRun*>(run), time, N_VGetArrayPointer(y),
                          N_VGetArrayPointer(rate));
}

void check(int flag) {
    if (flag >= 0) return;
    std::fprintf(stderr, "CVODE gave up: %s\n", CVodeGetReturnFlagName(flag));
    std::exit(1);
}

class Integrator {
  public:
    Integrator(DrawwellRun* run, double tolerance)
        : run_(run), size_(static_cast<sunindextype>(drawwell_size(run))) {
        check(SUNContext_Create(nullptr, &context_));
        y_ = N_VNew_Serial(size_, context_);
        N_Vector absolute = N_VNew_Serial(size_, context_);
        drawwell_unit(run, N_VGetArrayPointer(absolute));
        N_VScale(100 * tolerance, absolute, absolute);  // of a hundred kelvin
        drawwell_initial(run, state());
        memory_ = CVodeCreate(CV_BDF, context_);
        check(CVodeInit(memory_, rates, 0, y_));
        check(CVodeSVtolerances(memory_, tolerance, absolute));
        check(CVodeSetUserData(memory_, run));
        check(CVodeSetMaxNumSteps(memory_, 100000000));
        SUNMatrix jacobian = SUNDenseMatrix(size_, size_, context_);
        check(CVodeSetLinearSolver(memory_, SUNLinSol_Dense(y_, jacobian, context_), jacobian));
        check(CVodeSetMaxErrTestFails(memory_, 50));
        check(CVodeSetMaxConvFails(memory_, 100));
    }

    double* state() { return N_VGetArrayPointer(y_); }
    double begin(double time) {
        const double next = drawwell_begin(run_, time, state());
        check(CVodeReInit(memory_, time, y_));
        return next;
    }
    /// Goes on to a time on one stretch.
    void go_to(double from, double to) {
        double time = from;
        std::vector<double> before(state(), state() + size_);
        check(CVodeSetStopTime(memory_, to));
        while (time < to) {
            const double since = time;
            check(CVode(memory_, to, y_, &time, CV_ONE_STEP));
            ++steps;
            const auto verdict = drawwell_accepted(run_, time, time - since, state());
            if (verdict == drawwell_too_long) {
                std::copy(before.begin(), before.end(), state());
                check(CVodeReInit(memory_, since, y_));
                check(CVodeSetMaxStep(memory_, (time - since) / 4));
                time = since;
                ++taken_again;
                continue;
            }
            if (verdict == drawwell_begin_anew) check(CVodeReInit(memory_, time, y_));
            check(CVodeSetMaxStep(memory_, 0));  // none
            before.assign(state(), state() + size_);
        }
    }

    long steps = 0, taken_again = 0;

  private:
    DrawwellRun* run_;
    sunindextype size_;
    SUNContext context_ = nullptr;
    N_Vector y_ = nullptr;
    void* memory_ = nullptr;
};

}  // namespace

int main(int argc, char** argv) {
    if (argc != 5 && argc != 6) {
        std::fprintf(stderr, "use: %s STOVE.toml SECONDS EVERY TOLERANCE [BALANCED]\n", argv[0]);
        return 2;
    }
    const double end = std::atof(argv[2]), every = std::atof(argv[3]);
    DrawwellRun* run = drawwell_open(argv[1], end);
    if (!run) return 1;
    if (argc == 6) drawwell_balance_within(run, std::atof(argv[5]));
    std::vector<double> times;
    std::vector<std::vector<double>> shown;
    std::size_t quantities = 0;
    while (drawwell_name(run, quantities)) ++quantities;
    Integrator integrator(run, std::atof(argv[4]));
    const auto show = [&](double time) {
        times.push_back(time);
        drawwell_show(run, time, integrator.state(), shown.emplace_back(quantities).data());
    };
    const auto start = std::chrono::steady_clock::now();
    double time = 0;
    double next = integrator.begin(0);
    show(0);
    while (time < end) {
        const double sample = every * static_cast<double>(times.size());
        const double to = std::min(next, sample);
        integrator.go_to(time, to);
        time = to;
        if (time == next && time < end) next = integrator.begin(time);
        if (time == sample) show(time);
    }
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;
    std::fprintf(stderr, "%g s, %zu right-hand sides, %ld steps\n", spent.count(),
                 drawwell_evaluations(run), integrator.steps);
    char version[64] = "";
    SUNDIALSGetVersion(version, sizeof version);
    std::printf("# SUNDIALS CVODE %s, BDF, relative tolerance %s, %ld steps, %ld taken again\n",
                version, argv[4], integrator.steps, integrator.taken_again);
    std::printf("quantity");
    for (const double t : times) std::printf(",%g", t);
    for (std::size_t q = 0; q < quantities; ++q) {
        std::printf("\n%s", drawwell_name(run, q));
        for (const auto& at : shown) std::printf(",%.11g", at[q]);
    }
    std::printf("\n");
    drawwell_close(run);
    return 0;
}
