#![no_main]
libfuzzer_sys::fuzz_target!(|bytes: &[u8]| heftwise_fuzz::quantity(bytes));
