//! An incremental update of a finished PDF (ISO 32000-1, 7.5.6): a second catalog that asks the viewer
//! not to scale the pages when they are printed. The PDF library can't write that entry.

use crate::Error;

/// The entry of the catalog: ISO 32000-1, 12.2, table 150.
const PREFERENCES: &[u8] = b"/ViewerPreferences << /PrintScaling /None >>";

/// The file with its catalog replaced by one that also has the print preference. The first bytes of
/// the result are the bytes given.
///
/// # Errors
/// When the file has no plain cross-reference table or its catalog can't be found in it.
pub(crate) fn print_unscaled(mut file: Vec<u8>) -> Result<Vec<u8>, Error> {
    let update = update(&file).map_err(|what| Error::Writer(format!("no {what} in the PDF")))?;
    file.extend_from_slice(&update);
    Ok(file)
}

fn update(file: &[u8]) -> Result<Vec<u8>, &'static str> {
    let tail = rfind(file, b"startxref").ok_or("startxref")?;
    let table = number(&file[tail + 9..]).ok_or("table's offset")?;
    let trailer = rfind(&file[..tail], b"trailer").filter(|at| *at > table).ok_or("trailer")?;
    let dictionary = file[trailer + 7..tail].trim_ascii();
    let entries = dictionary.strip_suffix(b">>").ok_or("end of the trailer")?;
    let root = find(entries, b"/Root").ok_or("root")?;
    let catalog = number(&entries[root + 5..]).ok_or("root's number")?;

    let object = offset(&file[table..trailer], catalog).ok_or("offset of the catalog")?;
    let object = file.get(object..table).ok_or("catalog")?;
    let object = &object[..find(object, b"endobj").ok_or("end of the catalog")?];
    if !object.starts_with(format!("{catalog} 0 obj").as_bytes()) {
        return Err("catalog where the table says");
    }
    if find(object, b"/ViewerPreferences").is_some() {
        return Err("catalog without preferences");
    }
    let object = object.trim_ascii().strip_suffix(b">>").ok_or("dictionary of the catalog")?;

    let mut out = Vec::new();
    if !file.ends_with(b"\n") {
        out.push(b'\n');
    }
    let at = file.len() + out.len();
    for part in [object.trim_ascii_end(), b"\n  ", PREFERENCES, b"\n>>\nendobj\n\n"] {
        out.extend_from_slice(part);
    }
    let new_table = file.len() + out.len();
    let entry = format!("xref\n{catalog} 1\n{at:010} 00000 n \n");
    for part in [entry.as_bytes(), b"trailer\n", entries.trim_ascii_end()] {
        out.extend_from_slice(part);
    }
    let end = format!("\n  /Prev {table}\n>>\nstartxref\n{new_table}\n%%EOF\n");
    out.extend_from_slice(end.as_bytes());
    Ok(out)
}

/// Where the object begins, by a cross-reference table of one section that starts at object 0.
fn offset(table: &[u8], object: usize) -> Option<usize> {
    let rest = table.strip_prefix(b"xref\n0 ")?;
    let count = number(rest)?;
    let first = find(rest, b"\n")? + 1;
    // An entry has 20 bytes: ISO 32000-1, 7.5.4.
    let at = first.checked_add(object.checked_mul(20)?)?;
    let entry = rest.get(at..at.checked_add(20)?)?;
    (object < count && entry[17] == b'n').then(|| number(entry)).flatten()
}

/// The whole number that the bytes begin with, after white space.
fn number(bytes: &[u8]) -> Option<usize> {
    let bytes = bytes.trim_ascii_start();
    let digits = bytes.iter().take_while(|b| b.is_ascii_digit()).count();
    std::str::from_utf8(&bytes[..digits]).ok()?.parse().ok()
}

fn find(bytes: &[u8], what: &[u8]) -> Option<usize> {
    bytes.windows(what.len()).position(|w| w == what)
}

fn rfind(bytes: &[u8], what: &[u8]) -> Option<usize> {
    bytes.windows(what.len()).rposition(|w| w == what)
}

#[cfg(test)]
mod tests {
    use super::*;

    const FILE: &str = "%PDF-1.7\n1 0 obj\n<<\n  /Type /Catalog\n>>\nendobj\n\nxref\n0 2\n\
         0000000000 65535 f \n0000000009 00000 n \ntrailer\n<<\n  /Size 2\n  /Root 1 0 R\n>>\n\
         startxref\n50\n%%EOF";

    #[test]
    fn the_new_table_points_at_the_new_catalog_and_at_the_old_table() {
        let file = FILE.replace("50\n%%EOF", &format!("{}\n%%EOF", FILE.find("xref").unwrap()));
        let out = String::from_utf8(print_unscaled(file.clone().into_bytes()).unwrap()).unwrap();
        let added = out.strip_prefix(&file).unwrap();
        assert!(added.contains(&format!("/Prev {}", FILE.find("xref").unwrap())), "{added}");
        let at = out.rfind("1 0 obj").unwrap();
        assert!(added.contains(&format!("xref\n1 1\n{at:010} 00000 n \n")), "{added}");
        assert!(
            added.contains(&format!("startxref\n{}\n%%EOF\n", out.rfind("xref\n1 1").unwrap()))
        );
        assert!(
            out[at..].contains("/Type /Catalog\n  /ViewerPreferences << /PrintScaling /None >>")
        );
    }

    #[test]
    fn a_cut_or_strange_file_is_an_error_and_no_panic() {
        let file = FILE.replace("50\n%%EOF", &format!("{}\n%%EOF", FILE.find("xref").unwrap()));
        let whole = file.len() - "\n%%EOF".len();
        for end in 0..whole - 2 {
            assert!(print_unscaled(file.as_bytes()[..end].to_vec()).is_err(), "{end}");
        }
        let twice = print_unscaled(file.into_bytes()).unwrap();
        assert!(print_unscaled(twice).is_err());
    }
}
