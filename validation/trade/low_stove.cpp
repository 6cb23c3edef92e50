#include "validation/trade/low_stove.h"

namespace drawwell {

Setup low_stove() {
    return {R"(
[feed]
mouth = "280 mm"
width = "130 mm"
depth = "130 mm"
lining = ["32 mm firebrick"]
foot_lining = ["32 mm firebrick"]
[tunnel]
width = "130 mm"
height = "130 mm"
length = "400 mm"
lining = ["32 mm firebrick"]
roof = ["32 mm firebrick"]
[port]
width = "65 mm"
height = "130 mm"
[riser]
bore = "150 mm"
top = "790 mm"
lining = ["25 mm aes_board", "1 mm stainless_304"]
[barrel]
diameter = "460 mm"
height = "700 mm"
shell = ["1.2 mm mild_steel"]
[plate]
diameter = "480 mm"
thickness = "6 mm"
underside = "880 mm"
[flue]
outlet = "100 mm"
[flue.stack]
length = "2.5 m"
direction = "up"
bore = "150 mm"
wall = ["0.7 mm mild_steel"]
[wood]
moisture = "16 % wet"
side = "40 mm"
length = "350 mm"
[kindling]
mass = "0.5 kg"
[load.main]
at = ["6 min", "12 min", "24 min", "36 min", "48 min", "60 min", "72 min", "84 min", "96 min", "108 min"]
pieces = 3
[site]
room = "18 °C"
outdoor = "5 °C"
[burn]
duration = "2 h"
)"};
}

}  // namespace drawwell
