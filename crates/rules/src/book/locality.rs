//! The places whose amendments come with the program: `assets/code/places`.

use std::sync::{Arc, OnceLock};

use super::layer::{BookError, Layer};

macro_rules! files {
    ($($key:literal),* $(,)?) => {
        &[$(($key, include_str!(concat!("../../../../assets/code/places/", $key, ".ron")))),*]
    };
}

/// Key and text of each file, in the order of their names.
const FILES: &[(&str, &str)] = files![
    "ankeny-ia",
    "chicago-il",
    "everett-wa",
    "fargo-nd",
    "greenwood-village-co",
    "hopkins-mn",
    "minnesota",
    "new-castle-county-de",
    "newton-ks",
    "portland-or",
    "rapid-city-sd",
    "salt-lake-city-ut",
    "wisconsin",
];

/// A place with its amendments to the model code.
#[derive(Clone, Debug)]
pub struct Locality {
    /// What a plan and the command line name it by: `fargo-nd`.
    pub key: &'static str,
    pub layer: Arc<Layer>,
}

fn read(model: &Layer) -> Result<Vec<Locality>, BookError> {
    FILES
        .iter()
        .map(|(key, text)| {
            let layer = Layer::amendments(model, &format!("{key}.ron"), text)?;
            Ok(Locality { key, layer: Arc::new(layer) })
        })
        .collect()
}

/// Every place that comes with the program.
pub fn localities() -> &'static [Locality] {
    static PLACES: OnceLock<Vec<Locality>> = OnceLock::new();
    PLACES.get_or_init(|| match read(super::model()) {
        Ok(places) => places,
        Err(e) => unreachable!("the built-in places are read by a test: {e}"),
    })
}

/// The place of a key.
pub fn locality(key: &str) -> Option<&'static Locality> {
    localities().iter().find(|p| p.key == key)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_place_reads_and_says_something() {
        let places = read(super::super::model()).unwrap_or_else(|e| panic!("{e}"));
        assert!(places.len() >= 8);
        assert!(places.iter().map(|p| p.key).is_sorted());
        for place in places {
            assert!(place.layer.entries().next().is_some(), "{}", place.key);
            assert!(!place.layer.note.is_empty(), "{}", place.key);
        }
    }

    #[test]
    fn no_file_of_a_place_is_forgotten() {
        let dir = concat!(env!("CARGO_MANIFEST_DIR"), "/../../assets/code/places");
        let files = std::fs::read_dir(dir).expect("the folder of the places");
        assert_eq!(files.count(), FILES.len());
    }
}
