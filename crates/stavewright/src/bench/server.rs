//! The server: how it listens and answers.

use std::convert::Infallible;
use std::future::Future;
use std::io;
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::Semaphore;

use super::routes;
use super::shared::Bench;

/// Connections that are served at a time; more wait.
const MOST_CONNECTIONS: usize = 256;
/// The head of a request has to be there by then; a connection that asks nothing is closed as well.
const PATIENCE: Duration = Duration::from_secs(10);
/// The largest head of a request, in bytes.
const LARGEST_HEAD: usize = 32 * 1024;

/// Serves until `stop` is there.
pub(crate) async fn serve(
    listener: TcpListener,
    bench: Arc<Bench>,
    stop: impl Future<Output = ()>,
) -> io::Result<()> {
    let app = routes::app(&bench);
    let places = Arc::new(Semaphore::new(MOST_CONNECTIONS));
    tokio::pin!(stop);
    loop {
        let place = Arc::clone(&places).acquire_owned();
        let place = tokio::select! {
            place = place => place.map_err(io::Error::other)?,
            () = &mut stop => return Ok(()),
        };
        let accepted = tokio::select! {
            accepted = listener.accept() => accepted,
            () = &mut stop => return Ok(()),
        };
        // What fails here is one connection, or want of file handles that will be free again.
        let Ok((stream, _)) = accepted else {
            tokio::time::sleep(Duration::from_millis(20)).await;
            continue;
        };
        let app = app.clone();
        tokio::spawn(async move {
            let _place = place;
            let _: Result<(), Infallible> = converse(stream, app).await;
        });
    }
}

/// Answers the requests of one connection; it ends when the client goes or is too slow.
async fn converse(stream: TcpStream, app: Router) -> Result<(), Infallible> {
    let _ = stream.set_nodelay(true);
    let _ = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(PATIENCE)
        .max_buf_size(LARGEST_HEAD)
        .serve_connection(TokioIo::new(stream), TowerToHyperService::new(app))
        .await;
    Ok(())
}

/// A listener on this machine, or in the local network.
pub(crate) async fn listen(studio: bool, port: u16) -> io::Result<(TcpListener, SocketAddr)> {
    let host = if studio { [0, 0, 0, 0] } else { [127, 0, 0, 1] };
    let listener = TcpListener::bind(SocketAddr::from((host, port))).await?;
    let address = listener.local_addr()?;
    Ok((listener, address))
}
