//! Reading an amendment file.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use rules::Layer;

/// The largest file that is read: 1 MiB.
const LARGEST: u64 = 1 << 20;

/// Reads a file of amendments. The error says file, line where there is one, and what is wrong.
pub fn amendments(path: &Path) -> Result<Layer, String> {
    let name = path.display().to_string();
    let unreadable = |e: std::io::Error| format!("{name}: the file could not be read ({e}).");
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(unreadable)?;
    file.take(LARGEST + 1).read_to_end(&mut bytes).map_err(unreadable)?;
    if bytes.len() as u64 > LARGEST {
        return Err(format!("{name}: the file is over 1 MiB, which no list of amendments is."));
    }
    let text = String::from_utf8(bytes).map_err(|_| format!("{name}: this is not a text file."))?;
    rules::read_amendments(&name, &text).map_err(|e| format!("{e}."))
}
