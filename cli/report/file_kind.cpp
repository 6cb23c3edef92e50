#include "cli/report/file_kind.h"

#include <H5Cpp.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>
#include <vector>

#include "cli/report/schema_versions.h"

namespace drawwell {
namespace {

constexpr std::size_t head_size = 4096;
constexpr std::size_t block_size = 1 << 18;
constexpr off_t longest_heading = 1 << 24;  // bytes: beyond any table that drawwell writes

/// Names of tables in their mark.
constexpr std::array tables{std::pair{FileKind::series_table, std::string_view("series")},
                            std::pair{FileKind::draw_table, std::string_view("draw")},
                            std::pair{FileKind::compare_table, std::string_view("compare")}};

/// A plain file, open for reading; of anything else nothing is read.
class PlainFile {
  public:
    explicit PlainFile(const std::filesystem::path& file) {
        struct stat found {};
        // Opening a device may set it to work, opening a pipe may wait for ever.
        if (::stat(file.c_str(), &found) != 0 || !S_ISREG(found.st_mode)) return;
        descriptor_ = ::open(file.c_str(), O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC);
        if (descriptor_ >= 0 && ::fstat(descriptor_, &found) == 0 && S_ISREG(found.st_mode))
            size_ = found.st_size;
    }
    ~PlainFile() {
        if (descriptor_ >= 0) ::close(descriptor_);
    }
    PlainFile(const PlainFile&) = delete;
    PlainFile& operator=(const PlainFile&) = delete;

    off_t size() const { return size_; }
    /// What stands from there on, `most` bytes or fewer; empty: nothing, or it cannot be read.
    std::string read(off_t from, std::size_t most) const {
        std::string bytes(from < size_ ? most : 0, '\0');
        const ssize_t got =
            bytes.empty() ? 0 : ::pread(descriptor_, bytes.data(), bytes.size(), from);
        bytes.resize(got > 0 ? static_cast<std::size_t>(got) : 0);
        return bytes;
    }

  private:
    int descriptor_ = -1;
    off_t size_ = 0;
};

/// Takes a table byte by byte and keeps the ends of its rows, which tell whose it is.
class TableEnds {
  public:
    /// False: it is no table of drawwell's.
    bool take(std::string_view bytes) {
        for (const char c : bytes) {
            if (c == '"') quoted_ = !quoted_;
            if (c != '\n' || quoted_) {
                // Long enough for the longest mark; what stood before does not matter.
                if (end_.size() == longest_end) end_.erase(0, longest_end / 2);
                end_ += c;
            } else if (!take_row()) {
                return false;
            }
        }
        return true;
    }

    bool under_heading() const { return heading_; }
    /// Of a table that ends with its last row, and has one.
    FileKind kind() const { return end_.empty() ? kind_ : FileKind::other; }

  private:
    static constexpr std::size_t longest_end = 128;

    bool take_row() {
        const std::string_view row = end_;
        const std::size_t comma = row.rfind(',');
        const std::string cell(comma == std::string_view::npos ? "" : row.substr(comma + 1));
        end_.clear();
        if (!heading_) return heading_ = cell == table_mark;
        if (mark_.empty()) {
            mark_ = cell;
            kind_ = table_of(cell);
        }
        return kind_ != FileKind::other && cell == mark_;
    }

    /// Of any version.
    static FileKind table_of(std::string_view mark) {
        for (const auto& [kind, name] : tables) {
            if (!mark.starts_with(name) || mark.size() < name.size() + 2) continue;
            const std::string_view version = mark.substr(name.size() + 1);
            if (mark[name.size()] == ' ' &&
                version.find_first_not_of("0123456789") == std::string_view::npos)
                return kind;
        }
        return FileKind::other;
    }

    std::string end_;   // of the row that is being read
    std::string mark_;  // of the first row
    bool quoted_ = false, heading_ = false;
    FileKind kind_ = FileKind::other;
};

FileKind table_kind(const PlainFile& file) {
    TableEnds ends;
    off_t at = 0;
    while (at < file.size() && (ends.under_heading() || at < longest_heading)) {
        const std::string bytes = file.read(at, block_size);
        if (bytes.empty() || !ends.take(bytes)) return FileKind::other;
        at += static_cast<off_t>(bytes.size());
    }
    return ends.kind();
}

std::optional<std::string> short_text(const H5::Group& root, const char* name) {
    if (!root.attrExists(name)) return {};
    const H5::Attribute attribute = root.openAttribute(name);
    if (attribute.getTypeClass() != H5T_STRING || attribute.getInMemDataSize() > 256) return {};
    std::string text;
    attribute.read(attribute.getStrType(), text);
    return text.substr(0, text.find('\0'));
}

FileKind hdf5_kind(const std::filesystem::path& file) {
    H5::Exception::dontPrint();
    try {
        const H5::H5File hdf5(file.string(), H5F_ACC_RDONLY);
        const H5::Group root = hdf5.openGroup("/");
        if (short_text(root, "program") != program_mark) return FileKind::other;
        // The first comparisons said nothing of their content, nor of their version.
        return short_text(root, "content") == comparison_mark || !root.attrExists("schema_version")
                   ? FileKind::comparison
                   : FileKind::result;
    } catch (const H5::Exception&) {
        return FileKind::other;
    }
}

bool holds(std::string_view text, const std::string& part) {
    return text.find(part) != std::string_view::npos;
}

FileKind html_kind(std::string_view head) {
    const auto generator = [](std::string_view mark) {
        return fmt::format("\n<meta name=\"generator\" content=\"{}", mark);
    };
    if (holds(head, generator(page_mark))) return FileKind::page;
    return holds(head, generator(sheet_mark)) ? FileKind::sheet : FileKind::other;
}

FileKind svg_kind(std::string_view head) {
    const std::string_view second = head.substr(std::min(head.find('\n'), head.size() - 1) + 1);
    if (second.starts_with(figure_mark)) return FileKind::figure;
    return second.starts_with(fmt::format("<desc>{}", sheet_mark)) ? FileKind::sheet
                                                                   : FileKind::other;
}

/// Whoever goes on writing a PDF does so behind its end.
FileKind pdf_kind(const PlainFile& file) {
    constexpr off_t longest_mark = 80;
    const std::string end = file.read(std::max<off_t>(file.size() - longest_mark, 0), longest_mark);
    const std::size_t mark = end.rfind(fmt::format("% {}", sheet_mark));
    return mark != std::string::npos && end.find('\n', mark) + 1 == end.size() ? FileKind::sheet
                                                                               : FileKind::other;
}

}  // namespace

FileKind kind_of_file(const std::filesystem::path& file) {
    const PlainFile plain(file);
    const std::string head = plain.read(0, head_size);
    if (head.starts_with("\x89HDF\r\n\x1a\n")) return hdf5_kind(file);
    if (head.starts_with("<!DOCTYPE html>")) return html_kind(head);
    if (head.starts_with("<svg ")) return svg_kind(head);
    if (head.starts_with("%PDF-")) return pdf_kind(plain);
    if (head.starts_with(journal_mark)) return FileKind::journal;
    return table_kind(plain);
}

std::string_view kind_in_words(FileKind kind) {
    switch (kind) {
        case FileKind::stove:
            return "a stove file";
        case FileKind::result:
            return "a result";
        case FileKind::comparison:
            return "a comparison";
        case FileKind::series_table:
            return "a table of series";
        case FileKind::draw_table:
            return "a table of a draw";
        case FileKind::compare_table:
            return "a table of a comparison";
        case FileKind::figure:
            return "a figure";
        case FileKind::page:
            return "a report page";
        case FileKind::sheet:
            return "a sheet";
        case FileKind::journal:
            return "a journal of rows";
        case FileKind::other:
            break;
    }
    return "a file of yours";
}

std::string table_mark_of(FileKind table) {
    const auto found = std::find_if(tables.begin(), tables.end(),
                                    [&](const auto& each) { return each.first == table; });
    return fmt::format("{} {}", found->second, table_schema_version);
}

}  // namespace drawwell
