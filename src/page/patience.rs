//! A stream that waits for its reader for a limited time. Otherwise a reader that never takes its answer would keep its
//! place from others for ever.

use std::future::Future;
use std::io::{Error, ErrorKind, IoSlice, Result};
use std::pin::Pin;
use std::task::{Context, Poll, ready};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Instant, Sleep, sleep};

/// A stream, and how long a write may take without anything going out.
pub struct Patient<S> {
    stream: S,
    patience: Duration,
    /// Runs while a write waits.
    waits: Option<Pin<Box<Sleep>>>,
}

impl<S: Unpin> Patient<S> {
    /// A stream with this patience.
    pub fn new(stream: S, patience: Duration) -> Self {
        Patient { stream, patience, waits: None }
    }

    /// The result of a write. A write that waits longer than the patience fails.
    fn bounded<T>(&mut self, context: &mut Context<'_>, written: Poll<Result<T>>) -> Poll<Result<T>> {
        if written.is_ready() {
            self.waits = None;
            return written;
        }
        let patience = self.patience;
        let waits = self.waits.get_or_insert_with(|| Box::pin(sleep(patience)));
        ready!(waits.as_mut().poll(context));
        // The connection ends with this error. If it is polled again, it waits for the full time again.
        waits.as_mut().reset(Instant::now() + patience);
        Poll::Ready(Err(Error::from(ErrorKind::TimedOut)))
    }
}

impl<S: AsyncRead + Unpin> AsyncRead for Patient<S> {
    fn poll_read(mut self: Pin<&mut Self>, context: &mut Context<'_>, into: &mut ReadBuf<'_>) -> Poll<Result<()>> {
        Pin::new(&mut self.stream).poll_read(context, into)
    }
}

impl<S: AsyncWrite + Unpin> AsyncWrite for Patient<S> {
    fn poll_write(mut self: Pin<&mut Self>, context: &mut Context<'_>, bytes: &[u8]) -> Poll<Result<usize>> {
        let written = Pin::new(&mut self.stream).poll_write(context, bytes);
        self.bounded(context, written)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        pieces: &[IoSlice<'_>],
    ) -> Poll<Result<usize>> {
        let written = Pin::new(&mut self.stream).poll_write_vectored(context, pieces);
        self.bounded(context, written)
    }

    fn is_write_vectored(&self) -> bool {
        self.stream.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Result<()>> {
        let flushed = Pin::new(&mut self.stream).poll_flush(context);
        self.bounded(context, flushed)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Result<()>> {
        let shut = Pin::new(&mut self.stream).poll_shutdown(context);
        self.bounded(context, shut)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::future::poll_fn;
    use tokio::net::{TcpListener, TcpStream};

    #[test]
    fn who_does_not_read_is_let_go_and_who_reads_is_not() {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
        runtime.block_on(async {
            let listener = TcpListener::bind("127.0.0.1:0").await.expect("a port");
            let reader = TcpStream::connect(listener.local_addr().expect("its address")).await.expect("connected");
            let (stream, _) = listener.accept().await.expect("accepted");
            let mut patient = Patient::new(stream, Duration::from_millis(20));
            let block = [0; 64 * 1024];
            let mut out = 0;
            let ended = loop {
                match poll_fn(|context| Pin::new(&mut patient).poll_write(context, &block)).await {
                    Ok(written) => out += written,
                    Err(error) => break error.kind(),
                }
            };
            assert_eq!(ended, ErrorKind::TimedOut, "after {out} bytes");
            // Once it reads, it gets what was sent.
            let mut took = vec![0; 64 * 1024];
            while out > 0 {
                reader.readable().await.expect("readable");
                out -= reader.try_read(&mut took).unwrap_or(0);
            }
            assert!(poll_fn(|context| Pin::new(&mut patient).poll_write(context, &block)).await.is_ok());
        });
    }
}
