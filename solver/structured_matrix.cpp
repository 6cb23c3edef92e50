#include "solver/structured_matrix.h"

#include <algorithm>
#include <map>

namespace drawwell {

StructuredMatrix::StructuredMatrix(std::size_t size,
                                   std::span<const std::pair<std::size_t, std::size_t>> links,
                                   std::span<const std::size_t> coupled)
    : coupled_(coupled.begin(), coupled.end()),
      place_(size, not_coupled),
      edge_count_(links.size()),
      diagonal_(size),
      dense_(coupled.size() * coupled.size()),
      lu_(dense_.size()),
      lower_(coupled.size()),
      upper_(coupled.size()) {
    for (std::size_t c = 0; c < coupled_.size(); ++c) place_[coupled_[c]] = c;

    std::vector<std::map<std::size_t, std::size_t>> near(size);  // neighbour -> edge
    for (std::size_t l = 0; l < links.size(); ++l) {
        near[links[l].first].emplace(links[l].second, l);
        near[links[l].second].emplace(links[l].first, l);
    }
    std::vector<std::size_t> left;
    for (std::size_t i = 0; i < size; ++i)
        if (place_[i] == not_coupled) left.push_back(i);
    while (!left.empty()) {
        const auto least = std::min_element(left.begin(), left.end(), [&](auto a, auto b) {
            return near[a].size() < near[b].size();
        });
        const std::size_t i = *least;
        left.erase(least);
        Elimination step{i, {}, {}};
        for (const auto& [j, edge] : near[i]) {
            step.neighbours.push_back({j, edge});
            near[j].erase(i);
        }
        for (std::size_t a = 0; a < step.neighbours.size(); ++a)
            for (std::size_t b = a + 1; b < step.neighbours.size(); ++b) {
                const std::size_t j = step.neighbours[a].unknown, k = step.neighbours[b].unknown;
                const auto [it, added] = near[j].emplace(k, edge_count_);
                if (added) near[k].emplace(j, edge_count_++);
                step.fill.push_back(it->second);
            }
        order_.push_back(std::move(step));
    }
    for (std::size_t c = 0; c < coupled_.size(); ++c)
        for (const auto& [j, edge] : near[coupled_[c]])
            coupled_edges_.push_back({c, place_[j], edge});
    edge_.resize(edge_count_);
    factored_edge_.resize(edge_count_);
    factored_diagonal_.resize(size);
}

void StructuredMatrix::clear() {
    std::fill(diagonal_.begin(), diagonal_.end(), 0.0);
    std::fill(edge_.begin(), edge_.end(), 0.0);
    std::fill(dense_.begin(), dense_.end(), 0.0);
}

void StructuredMatrix::factor(double scale, std::span<const double> shift) {
    for (std::size_t i = 0; i < diagonal_.size(); ++i)
        factored_diagonal_[i] = scale * diagonal_[i] + shift[i];
    for (std::size_t e = 0; e < edge_count_; ++e) factored_edge_[e] = scale * edge_[e];
    auto& d = factored_diagonal_;
    auto& e = factored_edge_;
    for (const Elimination& step : order_) {
        std::size_t pair = 0;
        for (std::size_t a = 0; a < step.neighbours.size(); ++a) {
            const double share = e[step.neighbours[a].edge] / d[step.unknown];
            d[step.neighbours[a].unknown] -= share * e[step.neighbours[a].edge];
            for (std::size_t b = a + 1; b < step.neighbours.size(); ++b)
                e[step.fill[pair++]] -= share * e[step.neighbours[b].edge];
        }
    }
    const std::size_t n = coupled_.size();
    for (std::size_t i = 0; i < lu_.size(); ++i) lu_[i] = scale * dense_[i];
    for (std::size_t c = 0; c < n; ++c) lu_[c * n + c] += d[coupled_[c]];
    for (const CoupledEdge& edge : coupled_edges_) lu_[edge.row * n + edge.column] += e[edge.edge];
    eliminate_coupled();
}

void StructuredMatrix::eliminate_coupled() {
    const std::size_t n = coupled_.size();
    for (auto& row : lower_) row.clear();
    for (std::size_t k = 0; k < n; ++k) {
        const double* pivot = &lu_[k * n];
        upper_[k].clear();
        for (std::size_t j = k + 1; j < n; ++j)
            if (pivot[j] != 0) upper_[k].push_back(j);
        for (std::size_t i = k + 1; i < n; ++i) {
            double* row = &lu_[i * n];
            if (row[k] == 0) continue;
            row[k] /= pivot[k];
            lower_[i].push_back(k);
            for (const std::size_t j : upper_[k]) row[j] -= row[k] * pivot[j];
        }
    }
}

void StructuredMatrix::solve(std::span<double> x) const {
    for (const Elimination& step : order_) {
        const double share = x[step.unknown] / factored_diagonal_[step.unknown];
        for (const Neighbour& near : step.neighbours)
            x[near.unknown] -= factored_edge_[near.edge] * share;
    }
    const std::size_t n = coupled_.size();
    for (std::size_t i = 0; i < n; ++i)
        for (const std::size_t k : lower_[i]) x[coupled_[i]] -= lu_[i * n + k] * x[coupled_[k]];
    for (std::size_t i = n; i-- > 0;) {
        for (const std::size_t j : upper_[i]) x[coupled_[i]] -= lu_[i * n + j] * x[coupled_[j]];
        x[coupled_[i]] /= lu_[i * n + i];
    }
    for (auto step = order_.rbegin(); step != order_.rend(); ++step) {
        double sum = x[step->unknown];
        for (const Neighbour& near : step->neighbours)
            sum -= factored_edge_[near.edge] * x[near.unknown];
        x[step->unknown] = sum / factored_diagonal_[step->unknown];
    }
}

}  // namespace drawwell
