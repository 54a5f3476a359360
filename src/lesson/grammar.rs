//! The words of the lesson format: every block and every field, for the authors' page and its test.

use super::block::{self, prose};
use super::front;

/// A kind of live block: its name, and the fields of its tables.
#[derive(Debug, Clone, Copy)]
pub struct BlockGrammar {
    /// The info string of its fence.
    pub name: &'static str,
    /// Its tables and the fields of each; the block's own table has no name.
    pub tables: &'static [(&'static str, &'static [&'static str])],
}

/// Every live block.
pub fn blocks() -> impl Iterator<Item = BlockGrammar> {
    let toml = block::GRAMMARS
        .iter()
        .map(|grammar| BlockGrammar { name: grammar.name, tables: grammar.tables });
    toml.chain(prose::NAMES.into_iter().map(|name| BlockGrammar { name, tables: &[] }))
}

/// The fields of a front matter.
pub fn front_matter() -> &'static [&'static str] {
    front::FIELDS
}
