#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell explain STOVE.toml`: what each dimension and each uncertain figure does to the
/// answers; `--cure SYMPTOM`: which single change ends it.
void add_explain_command(CLI::App& app);

}  // namespace drawwell
