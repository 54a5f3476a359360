//! The build script: the released program for Linux is linked with the functions of its first frame
//! side by side. Fewer pages of the program are in memory then, and it is there sooner.
#![allow(clippy::print_stdout, reason = "Cargo reads what a build script prints")]

use std::env::{var, var_os};

fn main() {
    println!("cargo::rerun-if-changed=assets/order");
    let is = |name: &str, value: &str| var(name).is_ok_and(|is| is == value);
    // Rust's own linker for this system reads the script; somebody else's may not.
    let is_own_linker = var_os("RUSTC_LINKER").is_none()
        && var("CARGO_ENCODED_RUSTFLAGS").is_ok_and(|flags| !flags.contains("link"));
    if is("PROFILE", "release") && is("TARGET", "x86_64-unknown-linux-gnu") && is_own_linker {
        let package = var("CARGO_MANIFEST_DIR").unwrap_or_default();
        println!("cargo::rustc-link-arg-bins=-T{package}/assets/order/first-frame.ld");
    }
}
