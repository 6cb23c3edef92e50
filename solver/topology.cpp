#include "solver/topology.h"

#include <algorithm>
#include <cmath>

#include "solver/errors.h"

namespace drawwell {
namespace {

/// The tree of passages that are no inlets, rooted in the surroundings (vertex 0).
struct Tree {
    std::vector<std::size_t> parent_passage;  // [vertex]
    std::vector<std::size_t> parent;          // [vertex]
    std::vector<double> sign;                 // [vertex] +1 where the passage runs towards the root
    std::vector<bool> reached;
};

std::size_t vertex(const Network& network, JunctionId id) {
    return network.junctions[index(id)].boundary ? 0 : index(id) + 1;
}

Tree grow_tree(const Network& network) {
    const std::size_t n = network.junctions.size() + 1;
    Tree tree{std::vector<std::size_t>(n), std::vector<std::size_t>(n), std::vector<double>(n),
              std::vector<bool>(n)};
    tree.reached[0] = true;
    for (bool grew = true; grew;) {
        grew = false;
        for (std::size_t p = 0; p < network.passages.size(); ++p) {
            if (network.passages[p].inlet) continue;
            const std::size_t a = vertex(network, network.passages[p].from);
            const std::size_t b = vertex(network, network.passages[p].to);
            if (tree.reached[a] == tree.reached[b]) continue;
            const std::size_t leaf = tree.reached[a] ? b : a;
            tree.reached[leaf] = true;
            tree.parent[leaf] = tree.reached[a] && leaf == b ? a : b;
            tree.parent_passage[leaf] = p;
            tree.sign[leaf] = leaf == a ? 1.0 : -1.0;
            grew = true;
        }
    }
    return tree;
}

/// Adds the way from a vertex to the surroundings.
void add_way(const Tree& tree, std::size_t from, double amount, std::vector<double>& flow) {
    for (std::size_t v = from; v != 0; v = tree.parent[v])
        flow[tree.parent_passage[v]] += amount * tree.sign[v];
}

std::vector<Topology::End> ends_of(const Network& network, const std::vector<double>& way) {
    std::vector<Topology::End> ends;
    for (std::size_t p = 0; p < way.size(); ++p) {
        if (way[p] == 0) continue;
        const std::size_t from = index(network.passages[p].from);
        const std::size_t to = index(network.passages[p].to);
        if (network.junctions[from].boundary) ends.push_back({from, way[p]});
        if (network.junctions[to].boundary) ends.push_back({to, -way[p]});
    }
    return ends;
}

std::ptrdiff_t length(const std::vector<double>& way) {
    return std::count_if(way.begin(), way.end(), [](double share) { return share != 0; });
}

}  // namespace

Topology find_topology(const Network& network) {
    const std::size_t n = network.passages.size();
    const Tree tree = grow_tree(network);
    for (std::size_t j = 0; j < network.junctions.size(); ++j)
        if (!network.junctions[j].boundary && !tree.reached[j + 1])
            throw InputError(network.junctions[j].name + ": gas cannot leave from here");

    Topology topology;
    topology.by_inlet.assign(n, {});
    topology.by_site.assign(n, {});
    std::vector<std::vector<double>> ways;
    for (std::size_t p = 0; p < n; ++p) {
        if (!network.passages[p].inlet) continue;
        std::vector<double> way(n);
        way[p] = 1;
        add_way(tree, vertex(network, network.passages[p].to), 1, way);
        add_way(tree, vertex(network, network.passages[p].from), -1, way);
        topology.inlets.push_back(p);
        ways.push_back(std::move(way));
    }
    if (ways.empty()) throw InputError("nothing lets air in");

    topology.loop_count = ways.size();
    for (std::size_t k = 0; k < ways.size(); ++k) {
        for (std::size_t p = 0; p < n; ++p) topology.by_inlet[p].push_back(ways[k][p]);
        std::vector<double> loop = ways[k];
        if (k > 0) {
            std::vector<double> shorter = ways[k];
            std::transform(shorter.begin(), shorter.end(), ways[0].begin(), shorter.begin(),
                           std::minus<>());
            if (length(shorter) < length(loop)) loop = std::move(shorter);
        }
        topology.loop_ends.push_back(ends_of(network, loop));
        topology.loop.push_back(std::move(loop));
    }
    for (const Topology::End& end : topology.loop_ends[0])
        if (end.share < 0) {
            topology.gust_share = topology.suction_share({JunctionId{end.junction}});
            for (double& share : topology.gust_share) share = -share;
        }
    for (const JunctionId site : network.fire_sites) {
        std::vector<double> way(n);
        add_way(tree, vertex(network, site), 1, way);
        for (std::size_t p = 0; p < n; ++p) topology.by_site[p].push_back(way[p]);
    }
    return topology;
}

std::vector<double> Topology::suction_share(const std::vector<JunctionId>& boundaries) const {
    std::vector<double> shares(loop_count);
    for (std::size_t k = 0; k < loop_count; ++k)
        for (const End& end : loop_ends[k])
            for (const JunctionId id : boundaries)
                if (index(id) == end.junction) shares[k] += end.share;
    return shares;
}

}  // namespace drawwell
