#include "validation/random_stoves/random_stove.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>

#include "validation/random_stoves/dice.h"

namespace drawwell {
namespace {

// Of data/materials.toml and data/woods.toml.
constexpr const char* linings[]{"vermiculite_board_light",
                                "vermiculite_board",
                                "vermiculite_board_dense",
                                "vermiculite_board_very_dense",
                                "ceramic_blanket_96",
                                "ceramic_blanket_128",
                                "aes_blanket",
                                "fibre_board",
                                "aes_board",
                                "calcium_silicate",
                                "insulating_firebrick_23",
                                "insulating_firebrick_26",
                                "firebrick",
                                "perlite_clay",
                                "perlite_loose",
                                "vermiculite_loose",
                                "stone_wool",
                                "glass_rope",
                                "cob",
                                "sand",
                                "brick"};
constexpr const char* sheets[]{"mild_steel",       "mild_steel_painted", "mild_steel_bare",
                               "galvanised_steel", "stainless_304",      "cast_iron"};
constexpr const char* plates[]{"mild_steel", "mild_steel_bare", "stainless_304", "cast_iron",
                               "ceramic_glass"};
constexpr const char* woods[]{"ash",    "beech", "oak",    "birch", "alder",
                              "poplar", "pine",  "spruce", "larch", "douglas_fir"};

// A stove of this bore burns about this much: the project's sample, as a measure for others.
constexpr double usual_bore = 0.125;                     // [m]
constexpr double usual_rate = 2.4, modest_power = 3000;  // [kg/h], [W]

/// Writes one stove, part by part; later parts look at the sizes of earlier ones. Lengths [m].
class Writer {
  public:
    Writer(std::uint32_t seed, std::uint32_t index) : dice_(seed, index) {
        say("title", fmt::format("\"random {} of seed {}\"", index, seed));
    }

    std::string write(const BurnLength& length) {
        bore_ = dice_.ratio(0.08, 0.32);
        const double kind = dice_.share();
        fuel_ = kind < 0.78 ? Fuel::loads : kind < 0.88 ? Fuel::rate : Fuel::heat;
        firebox_ = fuel_ != Fuel::heat || dice_.chance(0.5);
        if (firebox_) firebox();
        riser();
        if (dice_.chance(0.85)) barrel();
        flue();
        switch (fuel_) {
            case Fuel::loads:
                wood();
                break;
            case Fuel::rate:
                burn_rate();
                break;
            case Fuel::heat:
                heat();
                break;
        }
        site();
        open("burn");
        say("duration", quoted(dice_.between(length.least, length.most), "s"));
        if (dice_.chance(0.3)) say("reserve_every", quoted(0, "s"));
        return text_;
    }

  private:
    enum class Fuel { loads, rate, heat };

    void open(std::string_view table) { text_ += fmt::format("\n[{}]\n", table); }
    /// One key. Throw dice once in a call: the order of arguments is the compiler's choice.
    void say(std::string_view key, std::string_view value) {
        text_ += fmt::format("{} = {}\n", key, value);
    }
    static std::string quoted(double value, std::string_view unit) {
        return fmt::format("\"{:.2f} {}\"", value, unit);
    }
    static std::string name(std::string_view word) { return fmt::format("\"{}\"", word); }
    static std::string mm(double length) { return fmt::format("\"{:.1f} mm\"", length * 1000); }
    double bores(double least, double most) { return bore_ * dice_.ratio(least, most); }

    /// One layer of a build-up; adds to `total` [m].
    std::string layer(const char* material, double thickness, double& total) {
        const double written = std::max(std::round(thickness * 1e4), 4.0) / 1e4;
        total += written;
        return fmt::format("\"{:.1f} mm {}\"", written * 1000, material);
    }
    std::string sheet(double& total) {
        const char* material = dice_.one_of(sheets);
        return layer(material, bores(0.004, 0.02), total);
    }
    std::string lining(double& total) {
        const char* material = dice_.one_of(linings);
        return layer(material, bores(0.1, 0.5), total);
    }
    /// From bare sheet to three layers, in square brackets.
    std::string wall(double& total) {
        std::string layers = "[";
        if (dice_.chance(0.1)) return "[" + sheet(total) + "]";
        if (dice_.chance(0.1)) layers += sheet(total) + ", ";
        layers += lining(total);
        if (dice_.chance(0.3)) layers += ", " + lining(total);
        if (dice_.chance(0.5)) layers += ", " + sheet(total);
        return layers + "]";
    }
    std::string wall() {
        double unused = 0;
        return wall(unused);
    }

    void firebox() {
        feed_width_ = bores(0.7, 1.1);
        feed_depth_ = bores(0.7, 1.1);
        tunnel_height_ = bores(0.7, 1.1);
        mouth_ = tunnel_height_ + bores(0.3, 3);
        const double tunnel_width = bores(0.7, 1.1);
        open("feed");
        say("mouth", mm(mouth_));
        say("width", mm(feed_width_));
        say("depth", mm(feed_depth_));
        if (dice_.chance(0.8)) say("lining", wall());
        if (dice_.chance(0.8)) say("foot_lining", wall());
        if (dice_.chance(0.1)) say("free", quoted(dice_.between(10, 100), "%"));
        open("tunnel");
        say("width", mm(tunnel_width));
        say("height", mm(tunnel_height_));
        say("length", mm((feed_depth_ + bore_) / 2 * dice_.ratio(1.02, 3)));
        if (dice_.chance(0.8)) say("lining", wall());
        if (dice_.chance(0.8)) say("roof", wall());
        if (dice_.chance(0.6)) {
            open("port");
            say("width", mm(tunnel_width * dice_.between(0.3, 0.99)));
            say("height", mm(tunnel_height_ * dice_.between(0.4, 0.99)));
        }
        if (dice_.chance(0.4)) {
            open("side_air.slot");
            say("width", mm(feed_width_ * dice_.between(0.3, 1)));
            say("height", mm(bores(0.02, 0.15)));
        }
        if (dice_.chance(0.4)) {
            open("side_air.holes");
            say("holes", std::to_string(dice_.whole(1, 12)));
            say("diameter", mm(bores(0.02, 0.12)));
            if (dice_.chance(0.5)) say("at", mm(mouth_ * dice_.between(0.05, 0.95)));
        }
    }

    void riser() {
        riser_foot_ = tunnel_height_ / 2;
        riser_top_ = tunnel_height_ + bores(1.2, 9);
        open("riser");
        say("top", mm(riser_top_));
        double width = bore_, depth = bore_;
        const bool round = dice_.chance(0.75);
        if (round) {
            say("bore", mm(bore_));
        } else {
            // Of at most a round one's section: feed and tunnel were sized by that.
            width = bores(0.6, 1.1);
            depth = 0.7 * bore_ * bore_ / width;
            say("width", mm(width));
            say("depth", mm(depth));
        }
        double lining = 0;
        say("lining", wall(lining));
        if (fuel_ == Fuel::heat && dice_.chance(0.3))
            say("wall_temperature", quoted(dice_.between(20, 900), "°C"));
        outside_ = round ? bore_ + 2 * lining : std::hypot(width + 2 * lining, depth + 2 * lining);
    }

    void barrel() {
        has_barrel_ = true;
        double shell = 0;
        const std::string layers = "[" + sheet(shell) + "]";
        const double diameter = outside_ * dice_.ratio(1.1, 2.5) + 2 * shell;
        const double underside = riser_top_ + bores(0.08, 1);
        height_ = underside - riser_foot_ - (riser_top_ - riser_foot_) * dice_.between(0.01, 0.7);
        open("barrel");
        say("diameter", mm(diameter));
        say("height", mm(height_));
        say("shell", layers);
        open("plate");
        say("diameter", mm(diameter * dice_.ratio(1, 1.3) + 1e-4));
        say("underside", mm(underside));
        say("thickness", mm(bores(0.015, 0.12)));
        say("material", name(dice_.one_of(plates)));
    }

    void flue() {
        const int sections = dice_.whole(0, 3);
        open("flue");
        if (dice_.chance(0.3)) say("cap", fmt::format("{:.2f}", dice_.between(0, 4)));
        double bore = bores(0.6, 1.3);
        if (has_barrel_) bore = std::min(bore, 0.98 * height_);
        if (has_barrel_ && sections > 0 && dice_.chance(0.7))
            say("outlet", mm(bore / 2 + (height_ - bore) * dice_.between(0.02, 1.01)));
        for (int i = 0; i < sections; ++i) {
            flue_section(fmt::format("flue.part{}", i), bore, i + 1 == sections);
            if (dice_.chance(0.3)) bore = bores(0.6, 1.3);
        }
    }

    /// Most go up, the last of them nearly always.
    void flue_section(const std::string& table, double bore, bool last) {
        open(table);
        const double length = last ? bores(1, 40) : bores(0.5, 12);
        say("length", mm(length));
        say("bore", mm(bore));
        const double way = dice_.share();
        if (way < 0.1)
            say("rise", mm(length * dice_.between(-0.5, 1)));
        else if (way > (last ? 0.97 : 0.85))
            say("direction", name("down"));
        else if (way > (last ? 0.9 : 0.5))
            say("direction", name("level"));
        const double kind = dice_.share();
        double unused = 0;
        if (kind < 0.5)
            say("wall", "[" + sheet(unused) + "]");
        else if (kind < 0.8)
            say("wall", wall());
        if (dice_.chance(0.4)) say("place", name("outdoors"));
        if (dice_.chance(0.2)) say("bend", quoted(dice_.between(0, 120), "deg"));
    }

    void wood() {
        open("wood");
        say("kind", name(dice_.one_of(woods)));
        say("moisture", quoted(dice_.between(5, 45), "% wet"));
        say("length", mm(bores(1, 4)));
        if (dice_.chance(0.8)) {
            open("kindling");
            const double place = dice_.share();
            say("place", name(place < 0.6 ? "riser_foot" : place < 0.8 ? "feed" : "flue"));
            if (dice_.chance(0.5))
                say("mass", quoted(25 * bore_ * bore_ * dice_.ratio(0.2, 4), "kg"));
            if (dice_.chance(0.5)) say("side", mm(bores(0.03, 0.2)));
            if (dice_.chance(0.3)) say("moisture", quoted(dice_.between(5, 25), "% wet"));
            if (dice_.chance(0.3)) say("kind", name(dice_.one_of(woods)));
        }
        open("load.first");
        say("at", quoted(dice_.between(0, 900), "s"));
        pieces();
        if (dice_.chance(0.15)) return;
        open("load.main");
        std::string times;
        double time = dice_.between(300, 1800);
        const double every = dice_.between(240, 3000);
        for (int i = dice_.whole(1, 8); i > 0; --i, time += every)
            times += (times.empty() ? "" : ", ") + quoted(time, "s");
        say("at", "[" + times + "]");
        pieces();
        if (dice_.chance(0.3)) say("kind", name(dice_.one_of(woods)));
        if (dice_.chance(0.3)) say("moisture", quoted(dice_.between(5, 45), "% wet"));
    }

    /// As many as fit; one time in fifty no heed is paid to that.
    void pieces() {
        const double side = std::floor(bores(0.12, 0.45) * 1e4) / 1e4;
        const double abreast = std::floor(feed_width_ / side) * std::floor(feed_depth_ / side);
        const int most = dice_.chance(0.02) ? 9 : std::clamp(static_cast<int>(abreast), 1, 9);
        say("pieces", std::to_string(dice_.whole(1, most)));
        say("side", mm(side));
        if (dice_.chance(0.2))
            say("mass", quoted(1400 * side * side * bore_ * dice_.ratio(0.3, 6) + 0.01, "kg"));
    }

    void burn_rate() {
        open("wood");
        say("kind", name(dice_.one_of(woods)));
        say("moisture", quoted(dice_.between(5, 45), "% wet"));
        open("burn_rate");
        const double size = bore_ / usual_bore;
        table("table", usual_rate * size * size, 2.5, "kg/h");
    }

    void heat() {
        open("heat");
        const double size = bore_ / usual_bore;
        table("power", modest_power * size * size, 1, "W");
    }

    /// One value, or three at increasing times: from a twentieth of the usual to so many times it.
    void table(std::string_view key, double usual, double most, std::string_view unit) {
        const std::string first = quoted(usual * dice_.ratio(0.05, most), unit);
        if (dice_.chance(0.5)) {
            say(key, first);
            return;
        }
        std::string points = "[\"0 s\", " + first + "]";
        double time = 0;
        for (int i = 0; i < 2; ++i) {
            time += dice_.between(1, 3600);
            points += ", [" + quoted(time, "s") + ", ";
            points += quoted(usual * dice_.ratio(0.05, most), unit) + "]";
        }
        say(key, "[" + points + "]");
    }

    void site() {
        open("site");
        const double room = dice_.chance(0.8) ? dice_.between(5, 30) : dice_.between(-20, 40);
        say("room", quoted(room, "°C"));
        say("outdoor", quoted(dice_.between(-20, 40), "°C"));
        if (dice_.chance(0.5)) say("altitude", quoted(dice_.between(0, 3000), "m"));
        if (dice_.chance(0.4)) {
            say("wind", quoted(dice_.between(0, 10), "m/s"));
            say("wind_factor", fmt::format("{:.2f}", dice_.between(-0.6, 0.3)));
        }
        if (dice_.chance(0.4)) say("wind_at_stove", quoted(dice_.between(0, 5), "m/s"));
        if (dice_.chance(0.4)) say("room_suction", quoted(dice_.between(-5, 5), "Pa"));
        if (dice_.chance(0.1)) say("room_suction_height", mm(dice_.between(0, 2)));
    }

    Dice dice_;
    std::string text_;
    Fuel fuel_{};
    bool firebox_ = false, has_barrel_ = false;
    double bore_ = 0, feed_width_ = 0, feed_depth_ = 0, tunnel_height_ = 0, mouth_ = 0;
    double riser_foot_ = 0, riser_top_ = 0;
    double outside_ = 0;  // of the riser: its diameter or diagonal
    double height_ = 0;   // of the barrel
};

}  // namespace

std::string random_stove(std::uint32_t seed, std::uint32_t index, const BurnLength& length) {
    return Writer(seed, index).write(length);
}

}  // namespace drawwell
