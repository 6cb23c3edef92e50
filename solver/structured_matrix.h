#pragma once

#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace drawwell {

/// A matrix of walls: conduction joins neighbours symmetrically, while the unknowns that gas or
/// radiation reaches ("coupled") act on each other densely and without symmetry.
///
/// The others stand in chains behind the faces and are eliminated one by one in an order fixed at
/// construction, with at most a few neighbours each. The coupled ones follow in the order given: in
/// that of the gas, most entries above the diagonal stay zero and are passed over. Nothing is
/// pivoted: what one wall loses by being warmer the others gain at most, so that every column is
/// dominated by its diagonal.
class StructuredMatrix {
  public:
    StructuredMatrix(std::size_t size, std::span<const std::pair<std::size_t, std::size_t>> links,
                     std::span<const std::size_t> coupled);

    void clear();
    double& diagonal(std::size_t i) { return diagonal_[i]; }
    /// The two equal entries of a link, in the order given at construction.
    double& link(std::size_t l) { return edge_[l]; }
    /// Entry among the coupled unknowns, by their places in `coupled`.
    double& dense(std::size_t row, std::size_t column) {
        return dense_[row * coupled_.size() + column];
    }
    /// Place of an unknown among the coupled ones, or `not_coupled`.
    std::size_t place(std::size_t i) const { return place_[i]; }
    static constexpr auto not_coupled = static_cast<std::size_t>(-1);
    std::size_t coupled_count() const { return coupled_.size(); }

    /// Factors scale * matrix + shift on the diagonal; the entries stay as they are.
    void factor(double scale, std::span<const double> shift);
    /// Right-hand side in, solution out.
    void solve(std::span<double> x) const;

  private:
    struct Neighbour {
        std::size_t unknown, edge;
    };
    struct Elimination {
        std::size_t unknown;
        std::vector<Neighbour> neighbours;
        std::vector<std::size_t> fill;  // edge of each pair of neighbours, first before second
    };
    void eliminate_coupled();

    std::vector<std::size_t> coupled_, place_;
    std::vector<Elimination> order_;
    struct CoupledEdge {
        std::size_t row, column, edge;
    };
    std::vector<CoupledEdge> coupled_edges_;
    std::size_t edge_count_;
    std::vector<double> diagonal_, edge_, dense_;
    std::vector<double> factored_diagonal_, factored_edge_;
    // Row-major: L below the diagonal, which is left out as one, and U; of each row the columns
    // that are not zero on either side of the diagonal.
    std::vector<double> lu_;
    std::vector<std::vector<std::size_t>> lower_, upper_;
};

}  // namespace drawwell
