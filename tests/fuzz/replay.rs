//! The kept corpus through every call, on a stable compiler: what the fuzzer once found stays found. Each file is one
//! text; its name says what it is about. `cargo xtask test fuzz` runs this.

mod every_call;

use std::fs;
use std::path::Path;

#[test]
fn every_text_of_the_corpus_is_answered() {
    let corpus = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/fuzz/corpus");
    let mut files: Vec<_> =
        fs::read_dir(&corpus).expect("the corpus").map(|entry| entry.expect("a file").path()).collect();
    files.sort();
    assert!(files.len() >= 24, "the corpus has {} files", files.len());
    for file in files {
        println!("{}", file.display());
        let bytes = fs::read(&file).expect("a file");
        // The page hands over text; what is not UTF-8 becomes so on the way.
        every_call::every_call(&String::from_utf8_lossy(&bytes));
    }
}
