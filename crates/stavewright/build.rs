//! Makes the program follow the page, which is built beside it and taken in when there is one.

use std::fs;

const PAGE: &str = "../../web/dist";

fn main() {
    // An empty folder will do; a missing one would be looked for at every build.
    if let Err(error) = fs::create_dir_all(PAGE) {
        println!("cargo::warning=web/dist cannot be made: {error}");
    }
    println!("cargo::rerun-if-changed={PAGE}");
}
