//! Gives the shared library the name it is linked by: the number is that of the ABI.

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    if std::env::var("CARGO_CFG_TARGET_OS").is_ok_and(|system| system == "linux") {
        println!("cargo::rustc-cdylib-link-arg=-Wl,-soname,liboverslab.so.0");
    }
}
