//! Time for a line drawing.

fn main() {
    divan::main();
}
