#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

using namespace fields;
using Derived = std::optional<Value>;

Derived nine_tenths_bore(const StoveDraft& draft, std::string_view) {
    return 0.9 * equal_bore(draft.stove.riser);
}
Derived feed_width(const StoveDraft& draft, std::string_view) {
    return draft.stove.feed->width;
}

Derived tunnel_width(const StoveDraft& draft, std::string_view name) {
    if (!draft.stove.feed) return nine_tenths_bore(draft, name);
    return draft.stove.feed->width;
}
Derived tunnel_height(const StoveDraft& draft, std::string_view name) {
    if (!draft.stove.feed) return nine_tenths_bore(draft, name);
    return draft.stove.feed->depth;
}
Derived tunnel_length(const StoveDraft& draft, std::string_view) {
    const double feed_depth = draft.stove.feed ? draft.stove.feed->depth : 0;
    const double bore = equal_bore(draft.stove.riser);
    return std::max(2.6 * bore, 1.1 * (bore + feed_depth));
}

// The throttle takes the tunnel's height and about six tenths of its width.
Derived port_width(const StoveDraft& draft, std::string_view) {
    if (!draft.stove.tunnel) return 0.75 * equal_bore(draft.stove.riser);
    return 0.64 * draft.stove.tunnel->width;
}
Derived port_height(const StoveDraft& draft, std::string_view) {
    if (!draft.stove.tunnel) return 0.75 * equal_bore(draft.stove.riser);
    return draft.stove.tunnel->height;
}
Derived firebox_width(const StoveDraft& draft, std::string_view) {
    return draft.stove.tunnel->width;
}
Derived firebox_height(const StoveDraft& draft, std::string_view) {
    return draft.stove.tunnel->height;
}
Derived tunnel_axis(const StoveDraft& draft, std::string_view) {
    return draft.stove.tunnel ? draft.stove.tunnel->height / 2 : 0.0;
}

}  // namespace

std::vector<Key> firebox_keys() {
    using enum Quantity;
    return {
        {.name = "feed.mouth",
         .quantity = length,
         .required = true,
         .least = 0.02,
         .most = 5,
         .help = "height of the feed's opening above the tunnel floor",
         .field = of<&Stove::feed, &Feed::mouth>},
        {.name = "feed.width",
         .quantity = length,
         .fallback = "0.9 of the bore",
         .derive = nine_tenths_bore,
         .practice = true,
         .least = 0.02,
         .most = 2,
         .help = "inside width of the feed, across the tunnel",
         .field = of<&Stove::feed, &Feed::width>},
        {.name = "feed.depth",
         .quantity = length,
         .fallback = "as feed.width",
         .derive = feed_width,
         .practice = true,
         .least = 0.02,
         .most = 2,
         .help = "inside depth of the feed, along the tunnel",
         .field = of<&Stove::feed, &Feed::depth>},
        {.name = "feed.free",
         .quantity = share,
         .fallback = "0 %",
         .most = 1,
         .help = "share of the feed free of wood; 0: follows from the loads",
         .field = of<&Stove::feed, &Feed::free_share>},
        {.name = "feed.lining",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "30 mm vermiculite_board",
         .practice = true,
         .help = "wall of the feed above the tunnel roof",
         .field = of<&Stove::feed, &Feed::lining>},
        {.name = "feed.foot_lining",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "32 mm firebrick",
         .practice = true,
         .help = "wall round the fire at the feed's foot",
         .field = of<&Stove::feed, &Feed::foot_lining>},
        {.name = "tunnel.width",
         .quantity = length,
         .fallback = "as feed.width",
         .derive = tunnel_width,
         .practice = true,
         .least = 0.02,
         .most = 2,
         .help = "inside width of the burn tunnel",
         .field = of<&Stove::tunnel, &Tunnel::width>},
        {.name = "tunnel.height",
         .quantity = length,
         .fallback = "as feed.depth",
         .derive = tunnel_height,
         .practice = true,
         .least = 0.02,
         .most = 2,
         .help = "inside height of the burn tunnel, floor to roof",
         .field = of<&Stove::tunnel, &Tunnel::height>},
        {.name = "tunnel.length",
         .quantity = length,
         .fallback = "2.6 bores or more",
         .derive = tunnel_length,
         .practice = true,
         .least = 0.03,
         .most = 5,
         .help = "from the feed's centre to the riser's centre",
         .field = of<&Stove::tunnel, &Tunnel::length>},
        {.name = "tunnel.lining",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "32 mm firebrick",
         .practice = true,
         .help = "floor and sides of the burn tunnel",
         .field = of<&Stove::tunnel, &Tunnel::lining>},
        {.name = "tunnel.roof",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "25 mm vermiculite_board",
         .practice = true,
         .help = "roof of the burn tunnel",
         .field = of<&Stove::tunnel, &Tunnel::roof>},
        {.name = "tunnel.firebox_length",
         .quantity = length,
         .fallback = "0 mm",
         .most = 5,
         .help = "how far a firebox larger than the tunnel reaches from the feed's centre, up to a "
                 "ledge; 0: there is none",
         .field = of<&Stove::tunnel, &Tunnel::firebox_length>},
        {.name = "tunnel.firebox_width",
         .quantity = length,
         .fallback = "as tunnel.width",
         .derive = firebox_width,
         .least = 0.02,
         .most = 2,
         .help = "inside width of that firebox",
         .field = of<&Stove::tunnel, &Tunnel::firebox_width>},
        {.name = "tunnel.firebox_height",
         .quantity = length,
         .fallback = "as tunnel.height",
         .derive = firebox_height,
         .least = 0.02,
         .most = 2,
         .help = "inside height of that firebox, on the tunnel's floor",
         .field = of<&Stove::tunnel, &Tunnel::firebox_height>},
        {.name = "tunnel.ash",
         .quantity = length,
         .fallback = "0 mm",
         .most = 1,
         .help = "depth of ash that lies under the fire at lighting; what burns adds to it",
         .field = of<&Stove::tunnel, &Tunnel::ash>},
        {.name = "port.width",
         .quantity = length,
         .fallback = "0.64 of the tunnel's",
         .derive = port_width,
         .practice = true,
         .least = 0.005,
         .most = 2,
         .help = "width of the port between tunnel and riser (throttle, orifice)",
         .field = of<&Stove::port, &Port::width>},
        {.name = "port.height",
         .quantity = length,
         .fallback = "as tunnel.height",
         .derive = port_height,
         .practice = true,
         .least = 0.005,
         .most = 2,
         .help = "height of the port; without a tunnel it is an orifice at the riser's foot",
         .field = of<&Stove::port, &Port::height>},
        {.name = "side_air.NAME.width",
         .quantity = length,
         .fallback = "none",
         .most = 2,
         .help = "width of a slot that lets room air to the fire",
         .field = named<&SideAir::slot_width>},
        {.name = "side_air.NAME.height",
         .quantity = length,
         .fallback = "none",
         .most = 1,
         .help = "height of the slot",
         .field = named<&SideAir::slot_height>},
        {.name = "side_air.NAME.holes",
         .kind = Kind::count,
         .fallback = "none",
         .most = 1000,
         .help = "number of drilled holes, instead of a slot",
         .field = named<&SideAir::holes>},
        {.name = "side_air.NAME.diameter",
         .quantity = length,
         .fallback = "none",
         .most = 0.2,
         .help = "diameter of each hole",
         .field = named<&SideAir::hole_diameter>},
        {.name = "side_air.NAME.at",
         .quantity = length,
         .fallback = "half tunnel.height",
         .derive = tunnel_axis,
         .most = 5,
         .help = "height of the opening's centre above the tunnel floor",
         .field = named<&SideAir::height>},
        {.name = "side_air.NAME.from",
         .kind = Kind::choice,
         .fallback = "room",
         .choices = {"room", "outdoors"},
         .help = "where the air comes from; from outdoors, through a duct",
         .field = named<&SideAir::outdoors>},
        {.name = "side_air.NAME.duct",
         .quantity = length,
         .fallback = "0 m",
         .most = 50,
         .help = "length of the duct that brings it, of the opening's section",
         .field = named<&SideAir::duct_length>},
    };
}

}  // namespace drawwell
