//! The server: how it listens and answers.

use std::future::Future;
use std::io;
use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use hyper::Request;
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper::service::{Service, service_fn};
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use tokio::net::{TcpListener, TcpStream};

use super::guest::Guest;
use super::patient::Patient;
use super::places::{Place, Places};
use super::routes;
use super::shared::Bench;

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
    bench.workers.warm().await;
    let places = Arc::new(Places::default());
    tokio::pin!(stop);
    loop {
        let accepted = tokio::select! {
            accepted = listener.accept() => accepted,
            () = &mut stop => return Ok(()),
        };
        // What fails here is one connection, or want of file handles that will be free again.
        let Ok((stream, from)) = accepted else {
            tokio::time::sleep(Duration::from_millis(20)).await;
            continue;
        };
        tokio::spawn(converse(stream, from.ip(), places.take(from.ip()), app.clone()));
    }
}

/// Answers the requests of one connection; it ends when the client goes, is too slow, or has to make room.
async fn converse(stream: TcpStream, guest: IpAddr, mut place: Place, app: Router) {
    let _ = stream.set_nodelay(true);
    let stream = Patient::new(stream, Arc::clone(&place.heard));
    let app = TowerToHyperService::new(app);
    let answer = service_fn(move |mut request: Request<Incoming>| {
        request.extensions_mut().insert(Guest(guest));
        app.call(request)
    });
    let serving = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(PATIENCE)
        .max_buf_size(LARGEST_HEAD)
        .serve_connection(TokioIo::new(stream), answer);
    tokio::select! {
        _ = serving => {}
        _ = &mut place.leave => {}
    }
}

/// A listener on this machine, or in the local network.
pub(crate) async fn listen(studio: bool, port: u16) -> io::Result<(TcpListener, SocketAddr)> {
    let host = if studio { [0, 0, 0, 0] } else { [127, 0, 0, 1] };
    let listener = TcpListener::bind(SocketAddr::from((host, port))).await?;
    let address = listener.local_addr()?;
    Ok((listener, address))
}
