#![no_main]

#[path = "../../tests/wild/feed.rs"]
#[allow(dead_code)]
mod feed;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    feed::readings(bytes);
});
