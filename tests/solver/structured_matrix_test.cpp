#include "solver/structured_matrix.h"

#include <doctest/doctest.h>

#include <Eigen/Dense>
#include <random>

using namespace drawwell;

namespace {

using Links = std::vector<std::pair<std::size_t, std::size_t>>;

/// A structured matrix with random entries, and the same as a plain one.
struct Pair {
    Pair(std::size_t size, const Links& links, const std::vector<std::size_t>& coupled,
         unsigned seed)
        : structured(size, links, coupled) {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> entry(-1, 1);
        const auto at = [](std::size_t i) { return static_cast<Eigen::Index>(i); };
        plain = Eigen::MatrixXd::Zero(at(size), at(size));
        structured.clear();
        for (std::size_t i = 0; i < size; ++i) {
            structured.diagonal(i) = 8 + entry(random);
            plain(at(i), at(i)) += structured.diagonal(i);
        }
        for (std::size_t l = 0; l < links.size(); ++l) {
            structured.link(l) = entry(random);
            plain(at(links[l].first), at(links[l].second)) += structured.link(l);
            plain(at(links[l].second), at(links[l].first)) += structured.link(l);
        }
        for (std::size_t i = 0; i < coupled.size(); ++i)
            for (std::size_t j = 0; j < coupled.size(); ++j) {
                structured.dense(i, j) = entry(random);
                plain(at(coupled[i]), at(coupled[j])) += structured.dense(i, j);
            }
    }
    StructuredMatrix structured;
    Eigen::MatrixXd plain;
};

/// Largest residual of scale * A x + shift x = b.
double residual(Pair& pair, double scale, double shift) {
    const auto n = pair.plain.rows();
    const std::vector<double> shifts(static_cast<std::size_t>(n), shift);
    pair.structured.factor(scale, shifts);
    Eigen::VectorXd right = Eigen::VectorXd::LinSpaced(n, -1, 2);
    std::vector<double> x(right.begin(), right.end());
    pair.structured.solve(x);
    const Eigen::MatrixXd whole = scale * pair.plain + shift * Eigen::MatrixXd::Identity(n, n);
    const Eigen::VectorXd exact = whole.partialPivLu().solve(right);
    return (exact - Eigen::Map<const Eigen::VectorXd>(x.data(), n)).cwiseAbs().maxCoeff();
}

}  // namespace

TEST_SUITE("solver/structured_matrix") {
    constexpr double rounding = 1e-12;  // diagonally dominant, tens of unknowns

    TEST_CASE("chains behind coupled faces are solved as a dense matrix would be") {
        // Three walls of four cells each, whose first cells are coupled; backs of two joined.
        const Links links{{0, 1}, {1, 2}, {2, 3},  {4, 5},   {5, 6},
                          {6, 7}, {8, 9}, {9, 10}, {10, 11}, {3, 7}};
        Pair pair(12, links, {0, 4, 8}, 1);
        CHECK(residual(pair, 1, 0.5) < rounding);
    }

    TEST_CASE("coupled unknowns may be linked to each other, and stand in any order") {
        const Links links{{0, 3}, {3, 1}, {1, 2}, {2, 0}, {4, 2}};
        Pair pair(5, links, {3, 0, 2}, 2);
        CHECK(residual(pair, 1, 0) < rounding);
    }

    TEST_CASE("rings and meshes among the others are filled in as they are eliminated") {
        Links links;
        const std::size_t side = 5;
        for (std::size_t i = 0; i < side; ++i)
            for (std::size_t j = 0; j < side; ++j) {
                if (j + 1 < side) links.emplace_back(i * side + j, i * side + j + 1);
                if (i + 1 < side) links.emplace_back(i * side + j, i * side + j + side);
            }
        Pair pair(side * side, links, {7, 20}, 3);
        CHECK(residual(pair, 1, 1) < rounding);
        Pair nothing_coupled(side * side, links, {}, 4);
        CHECK(residual(nothing_coupled, 1, 1) < rounding);
    }

    TEST_CASE("a second factoring, scaled and shifted otherwise, starts from the same entries") {
        const Links links{{0, 1}, {1, 2}, {2, 3}};
        Pair pair(4, links, {0, 3}, 5);
        CHECK(residual(pair, 1, 0.1) < rounding);
        CHECK(residual(pair, 0.25, 3) < rounding);
    }

    TEST_CASE("clearing leaves the shift alone to be solved") {
        const Links links{{0, 1}};
        Pair pair(2, links, {0}, 6);
        pair.structured.clear();
        pair.structured.factor(1, std::vector<double>{2, 4});
        std::vector<double> x{2, 2};
        pair.structured.solve(x);
        CHECK(x[0] == doctest::Approx(1));
        CHECK(x[1] == doctest::Approx(0.5));
    }

    TEST_CASE("only coupled unknowns have a place") {
        const StructuredMatrix matrix(3, Links{{0, 1}, {1, 2}}, std::vector<std::size_t>{2, 0});
        CHECK(matrix.place(2) == 0);
        CHECK(matrix.place(0) == 1);
        CHECK(matrix.place(1) == StructuredMatrix::not_coupled);
        CHECK(matrix.coupled_count() == 2);
    }
}
