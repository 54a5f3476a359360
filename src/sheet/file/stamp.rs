//! A mark of what a file held, to notice that another program changed it.

use std::fs;
use std::io::{self, ErrorKind};
use std::path::Path;

/// A mark of what a file held: its length and a hash of its bytes. Its time is left out, since
/// some disks keep it to two seconds, and copying a file back changes it for nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Stamp {
    length: usize,
    hash: u64,
}

impl Stamp {
    /// The mark of these bytes.
    pub(super) fn of(bytes: &[u8]) -> Self {
        Self { length: bytes.len(), hash: hash(bytes) }
    }

    /// The mark of what a file holds now; none when there is no file.
    ///
    /// # Errors
    /// The file is there and cannot be read.
    pub fn on_disk(path: &Path) -> io::Result<Option<Self>> {
        match fs::read(path) {
            Ok(bytes) => Ok(Some(Self::of(&bytes))),
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error),
        }
    }
}

/// The 64-bit FNV-1a hash (IETF draft-eastlake-fnv), the same on every machine and in every
/// release, which names of recovery copies need.
pub(super) fn hash(bytes: &[u8]) -> u64 {
    bytes.iter().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0000_0100_0000_01b3)
    })
}

#[cfg(test)]
mod tests {
    use super::hash;

    /// Test vectors of the FNV draft (draft-eastlake-fnv, appendix: `a` and `foobar`).
    #[test]
    fn the_hash_is_fnv_1a() {
        assert_eq!(hash(b""), 0xcbf2_9ce4_8422_2325);
        assert_eq!(hash(b"a"), 0xaf63_dc4c_8601_ec8c);
        assert_eq!(hash(b"foobar"), 0x8594_4171_f739_67e8);
    }
}
