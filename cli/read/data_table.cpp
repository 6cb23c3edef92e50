#include "cli/read/data_table.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "cli/read/embedded_data.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {

DataFile::DataFile(std::string name, std::string_view text) : name_(std::move(name)) {
    RawFile raw = parse_raw(text, name_);
    for (const TableHead& head : raw.tables) rows_[head.name];
    for (Entry& entry : raw.entries) {
        const std::size_t dot = entry.key.find('.');
        if (dot == std::string::npos)
            throw InputError(fmt::format("{}: `{}` stands outside any row", name_, entry.key));
        rows_[entry.key.substr(0, dot)].emplace(entry.key.substr(dot + 1), std::move(entry.value));
    }
    for (const auto& [row_name, values] : rows_) {
        const auto like = values.find("like");
        if (like == values.end()) continue;
        const auto other = rows_.find(like->second.text);
        if (other == rows_.end() || other->second.contains("like"))
            throw InputError(fmt::format("{}: {}.like must name a row that is complete by itself",
                                         name_, row_name));
    }
}

std::vector<std::string> DataFile::rows() const {
    std::vector<std::string> names;
    for (const auto& [name, values] : rows_) names.push_back(name);
    return names;
}

DataTable DataFile::row(std::string_view name) const {
    const auto found = rows_.find(name);
    if (found == rows_.end())
        throw InputError(fmt::format("{}: there is no row [{}]", name_, name));
    return {*this, found->first};
}

const RawValue* DataTable::find(std::string_view key) const {
    const DataFile::Values& own = file_->rows_.find(name_)->second;
    if (const auto found = own.find(key); found != own.end()) return &found->second;
    const auto like = own.find("like");
    if (like == own.end()) return nullptr;
    const DataFile::Values& other = file_->rows_.find(like->second.text)->second;
    const auto found = other.find(key);
    return found == other.end() ? nullptr : &found->second;
}

void DataTable::fail(std::string_view key, std::string_view why) const {
    throw InputError(fmt::format("{}: {}.{}: {}", file_->name(), name_, key, why));
}

bool DataTable::has(std::string_view key) const {
    return find(key) != nullptr;
}

std::string DataTable::text(std::string_view key) const {
    const RawValue* value = find(key);
    if (!value) fail(key, "is missing");
    if (value->form != RawValue::Form::text || value->text.empty())
        fail(key, "must be a text that is not empty");
    return value->text;
}

std::vector<std::string> DataTable::texts(std::string_view key) const {
    const RawValue* value = find(key);
    if (!value) fail(key, "is missing");
    std::vector<std::string> list;
    for (const RawValue& item : value->items) {
        if (item.form != RawValue::Form::text || item.text.empty())
            fail(key, "must be a list of texts that are not empty");
        list.push_back(item.text);
    }
    if (list.empty()) fail(key, "must be a list of texts");
    return list;
}

double DataTable::number(std::string_view key) const {
    const RawValue* value = find(key);
    if (!value) fail(key, "is missing");
    if (value->form != RawValue::Form::number || !std::isfinite(value->number))
        fail(key, "must be a finite number");
    return value->number;
}

double DataTable::positive(std::string_view key) const {
    const double value = number(key);
    if (!(value > 0)) fail(key, "must be above 0");
    return value;
}

double DataTable::share(std::string_view key) const {
    const double value = number(key);
    if (!(value >= 0 && value <= 1)) fail(key, "must lie in 0..1");
    return value;
}

double DataTable::temperature(std::string_view key) const {
    const double kelvin = number(key) + constants::ice_point;
    if (!(kelvin > 0)) fail(key, "must be above -273.15 degC");
    return kelvin;
}

Table DataTable::by_temperature(std::string_view key) const {
    const RawValue* value = find(key);
    if (!value) fail(key, "is missing");
    const auto is_pair = [](const RawValue& item) {
        return item.items.size() == 2 && item.items[0].form == RawValue::Form::number &&
               item.items[1].form == RawValue::Form::number &&
               std::isfinite(item.items[0].number) && std::isfinite(item.items[1].number);
    };
    std::vector<double> temperatures, values;
    for (const RawValue& item : value->items) {
        if (!is_pair(item)) fail(key, "must be a list of pairs [degC, value]");
        temperatures.push_back(item.items[0].number + constants::ice_point);
        values.push_back(item.items[1].number);
        if (!(temperatures.back() > 0 && values.back() > 0))
            fail(key, "values must be above 0, temperatures above -273.15 degC");
    }
    try {
        return {std::move(temperatures), std::move(values)};
    } catch (const InputError& error) {
        fail(key, error.what());
    }
}

DataFile embedded_file(const std::string& name) {
    const std::string_view text = embedded_data(name);
    if (text.empty()) throw InputError(fmt::format("data/{} is not compiled in", name));
    return {"data/" + name, text};
}

}  // namespace drawwell
