#include "validation/measured/builders_stove.h"

#include <algorithm>
#include <cmath>

namespace drawwell {

Setup builders_stove() {
    return {R"(
title = "a builder's eight-inch system"
[feed]
mouth = "360 mm"
width = "175 mm"
depth = "180 mm"
lining = ["64 mm firebrick"]
foot_lining = ["64 mm firebrick"]
[tunnel]
width = "175 mm"
height = "180 mm"
length = "500 mm"
lining = ["64 mm firebrick"]
roof = ["64 mm firebrick"]
[riser]
bore = "200 mm"
top = "1090 mm"
lining = ["25 mm aes_board", "25 mm aes_blanket", "1 mm stainless_304"]
[barrel]
diameter = "570 mm"
height = "880 mm"
shell = ["1.2 mm mild_steel"]
[plate]
diameter = "590 mm"
thickness = "1.2 mm"
underside = "1150 mm"
[flue]
outlet = "115 mm"
[flue.level]
length = "2 m"
direction = "level"
bore = "200 mm"
wall = ["0.7 mm mild_steel"]
[flue.stack]
length = "3 m"
direction = "up"
bore = "200 mm"
wall = ["0.7 mm mild_steel"]
[wood]
moisture = "16 % wet"
side = "50 mm"
length = "400 mm"
[kindling]
mass = "0.8 kg"
[load.main]
at = ["6 min", "12 min", "24 min", "36 min", "48 min", "60 min", "72 min", "84 min", "96 min", "108 min", "120 min", "132 min", "144 min", "156 min", "168 min"]
pieces = 3
[site]
room = "18 °C"
outdoor = "5 °C"
[burn]
duration = "3 h"
)"};
}

Setup builders_stove_fed_sparingly() {
    return builders_stove().with(
        {"load.main.at=6 min, 24 min, 48 min, 72 min, 96 min, 120 min, 144 min, 168 min"});
}

Figure between(const Figure& sparingly, const Figure& fully) {
    return {(sparingly.value + fully.value) / 2,
            std::abs(fully.value - sparingly.value) / 2 + std::max(sparingly.spread, fully.spread)};
}

Setup elbow_stove() {
    return {R"(
title = "an elbow stove"
[feed]
mouth = "130 mm"
width = "114 mm"
depth = "114 mm"
free = "70 %"
lining = ["1 mm mild_steel", "40 mm perlite_loose"]
foot_lining = ["1 mm mild_steel", "40 mm perlite_loose"]
[tunnel]
width = "114 mm"
height = "114 mm"
length = "130 mm"
lining = ["1 mm mild_steel", "40 mm perlite_loose"]
roof = ["1 mm mild_steel", "40 mm perlite_loose"]
[riser]
bore = "114.3 mm"
top = "305 mm"
lining = ["1 mm mild_steel", "40 mm perlite_loose"]
[burn_rate]
table = "1.2 kg/h"
[wood]
moisture = "10 % wet"
[site]
room = "20 °C"
outdoor = "20 °C"
[burn]
duration = "1 h"
)"};
}

}  // namespace drawwell
