//! Calls within a bound: where the program is wrong, a test fails with a word and does not hang.

use std::io::Read;
use std::process::{Child, ChildStdin, Command, Output, Stdio};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

/// Far more than anything here takes on the slowest machine: what has not come by then never comes.
pub const HANGS_AFTER: Duration = Duration::from_secs(300);

/// Waits until something is there.
pub fn until(what: &str, mut there: impl FnMut() -> bool) {
    let begun = Instant::now();
    while !there() {
        assert!(begun.elapsed() < HANGS_AFTER, "waited in vain until {what}");
        std::thread::sleep(Duration::from_millis(5));
    }
}

/// A program at work and whatever it starts itself; killed where a test fails before its end.
pub struct Running {
    child: Child,
    out: Option<JoinHandle<Vec<u8>>>,
    err: Option<JoinHandle<Vec<u8>>>,
}

/// Reads a pipe to its end, beside the test, so that none ever fills.
fn drained(pipe: Option<impl Read + Send + 'static>) -> Option<JoinHandle<Vec<u8>>> {
    pipe.map(|mut pipe| {
        std::thread::spawn(move || {
            let mut bytes = Vec::new();
            pipe.read_to_end(&mut bytes).expect("a pipe can be read");
            bytes
        })
    })
}

impl Running {
    /// Starts a program. The pipes out of it that the command asks for are read beside.
    pub fn start(command: &mut Command) -> Running {
        // A group of its own: what a shell has started is killed with it.
        #[cfg(unix)]
        std::os::unix::process::CommandExt::process_group(command, 0);
        let mut child = command.spawn().expect("it starts");
        let (out, err) = (drained(child.stdout.take()), drained(child.stderr.take()));
        Running { child, out, err }
    }

    /// The pipe into it.
    pub fn feed(&mut self) -> ChildStdin {
        self.child.stdin.take().expect("a pipe")
    }

    /// Its number.
    #[cfg(unix)]
    pub fn id(&self) -> u32 {
        self.child.id()
    }

    /// Kills it at once, as a power cut does.
    pub fn kill(&mut self) {
        #[cfg(unix)]
        let _ = Command::new("kill").args(["-KILL", "--", &format!("-{}", self.child.id())]).status();
        let _ = self.child.kill();
        self.child.wait().expect("killed or ended");
    }

    /// What it leaves when it has ended by itself.
    pub fn output(mut self) -> Output {
        until("the program ends", || self.child.try_wait().expect("a child").is_some());
        // What it started may hold the pipes longer than it lives.
        let pipes = [&self.out, &self.err];
        until("its pipes are closed", || pipes.iter().all(|p| p.as_ref().is_none_or(JoinHandle::is_finished)));
        let read = |pipe: Option<JoinHandle<Vec<u8>>>| pipe.map_or(Vec::new(), |p| p.join().expect("read"));
        let (stdout, stderr) = (read(self.out.take()), read(self.err.take()));
        Output { status: self.child.wait().expect("it has ended"), stdout, stderr }
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // Where it has ended and been waited for, its number may be another's by now.
        if matches!(self.child.try_wait(), Ok(None)) {
            self.kill();
        }
    }
}

/// Calls a program without anything on stdin.
#[cfg_attr(not(unix), allow(dead_code))] // Of two that share this file one calls no shell there.
pub fn run(command: &mut Command) -> Output {
    Running::start(command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped())).output()
}

#[test]
#[cfg(unix)]
fn what_never_ends_is_killed_with_all_that_it_started() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut command = Command::new("sh");
    command.current_dir(dir.path()).args(["-c", "sleep 100000 & echo > begun; wait"]);
    let mut running = Running::start(command.stdin(Stdio::null()).stdout(Stdio::piped()));
    until("it has begun", || dir.path().join("begun").exists());
    running.kill();
    // The pipe is closed only when nobody is left who holds it.
    assert!(!running.output().status.success());
}
