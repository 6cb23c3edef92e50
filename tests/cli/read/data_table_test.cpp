#include "cli/read/data_table.h"

#include <doctest/doctest.h>

#include <string>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

std::string complaint(const std::string& value) {
    const DataFile file("things.toml", "[brick]\nkey = " + value + "\n");
    try {
        const DataTable row = file.row("brick");
        if (value.front() == '[')
            row.by_temperature("key");
        else if (value.front() == '"')
            row.text("key");
        else
            row.share("key");
    } catch (const InputError& error) {
        return error.what();
    }
    return "no complaint";
}

}  // namespace

TEST_CASE("a row of a data file gives texts, numbers and tables in SI") {
    const DataFile file("things.toml",
                        "[brick]\nname = \"red\"\nlimit_c = 100\nshare = 0.5\n"
                        "k_by_c = [[0, 1], [100, 3.0]]\n");
    const DataTable row = file.row("brick");
    CHECK(row.text("name") == "red");
    CHECK(row.temperature("limit_c") == near(373.15, 1e-12));
    CHECK(row.share("share") == 0.5);
    CHECK(row.by_temperature("k_by_c")(323.15) == near(2.0, 1e-12));
    CHECK(row.has("share"));
    CHECK_FALSE(row.has("nothing"));
    CHECK(file.rows().size() == 1);
}

TEST_CASE("a row like another takes what it leaves out") {
    const DataFile file("things.toml", "[a]\nx = 0.1\ny = 0.2\n[b]\nlike = \"a\"\ny = 0.3\n");
    CHECK(file.row("b").share("x") == 0.1);
    CHECK(file.row("b").share("y") == 0.3);
    CHECK(file.row("b").name() == "b");
}

TEST_CASE("a damaged data file is refused with file, row and key") {
    for (const std::string value : {"1.5", "-0.1", "nan", "inf", "true", "\"\"", "[[0, 1], [0, 2]]",
                                    "[[0, 1], [10, -2]]", "[1, 2]", "[]", "[[-300, 1]]"}) {
        const std::string why = complaint(value);
        INFO(value);
        CHECK(why.find("things.toml: brick.key: ") == 0);
    }
    const DataFile file("things.toml", "[a]\nx = 0.1\n");
    CHECK_THROWS_WITH_AS(file.row("a").text("source"), "things.toml: a.source: is missing",
                         InputError);
    CHECK_THROWS_AS(file.row("b"), InputError);
    CHECK_THROWS_AS(DataFile("things.toml", "x = 1\n"), InputError);
    CHECK_THROWS_AS(DataFile("things.toml", "[a\n"), InputError);
    CHECK_THROWS_AS(DataFile("things.toml", "[a]\nlike = \"a\"\n"), InputError);
    CHECK_THROWS_AS(DataFile("things.toml", "[a]\nlike = \"none\"\n"), InputError);
    CHECK_THROWS_AS(embedded_file("absent.toml"), InputError);
}
