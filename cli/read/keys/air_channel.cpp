#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

std::optional<Value> tunnel_length(const StoveDraft& draft, std::string_view) {
    return draft.stove.tunnel ? draft.stove.tunnel->length : 0.0;
}

}  // namespace

std::vector<Key> air_channel_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "air_channel.NAME.width",
         .quantity = length,
         .required = true,
         .least = 0.01,
         .most = 2,
         .help = "width of the channel, against the outside of the tunnel's floor or sides",
         .field = fitted<&AirChannel::width>},
        {.name = "air_channel.NAME.height",
         .quantity = length,
         .required = true,
         .least = 0.002,
         .most = 0.5,
         .help = "clear height of the channel",
         .field = fitted<&AirChannel::height>},
        {.name = "air_channel.NAME.length",
         .quantity = length,
         .fallback = "the tunnel's length",
         .derive = tunnel_length,
         .most = 5,
         .help = "how far it runs along the tunnel, to the fire",
         .field = fitted<&AirChannel::length>},
        {.name = "air_channel.NAME.from",
         .kind = Kind::choice,
         .fallback = "room",
         .choices = {"room", "outdoors"},
         .help = "where its air comes from",
         .field = fitted<&AirChannel::outdoors>},
    };
}

}  // namespace drawwell
