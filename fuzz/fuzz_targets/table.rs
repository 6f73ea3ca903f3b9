#![no_main]

#[path = "../../tests/wild/feed.rs"]
#[allow(dead_code)]
mod feed;

libfuzzer_sys::fuzz_target!(
    // A panic of the workbook library is caught where it is called; libfuzzer's hook would end the process before that. What
    // is not caught there ends it all the same.
    init: std::panic::set_hook(Box::new(|_| ())),
    |bytes: &[u8]| {
        feed::table(bytes);
    }
);
