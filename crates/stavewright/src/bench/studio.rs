//! The bench in the studio: its address for other machines, as text and as a square to scan.

use std::net::{IpAddr, SocketAddr, UdpSocket};

use qrcode::QrCode;
use qrcode::render::unicode::Dense1x2;

/// This machine's address in the local network, if it has one.
///
/// Nothing is sent: the system only says from which address it would reach one that is kept for
/// documentation (RFC 5737).
pub(crate) fn own_address() -> Option<IpAddr> {
    let socket = UdpSocket::bind(SocketAddr::from(([0, 0, 0, 0], 0))).ok()?;
    socket.connect(SocketAddr::from(([192, 0, 2, 1], 9))).ok()?;
    let address = socket.local_addr().ok()?.ip();
    (!address.is_unspecified()).then_some(address)
}

/// A text as a square for the terminal, dark on light; none if it is too long for one.
pub(crate) fn square(text: &str) -> Option<String> {
    let code = QrCode::new(text).ok()?;
    Some(code.render::<Dense1x2>().dark_color(Dense1x2::Light).light_color(Dense1x2::Dark).build())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_becomes_a_square() {
        let drawn = square("http://192.168.0.12:8080/?token=0123456789abcdef0123456789abcdef").unwrap();
        let lines: Vec<&str> = drawn.lines().collect();
        assert!(lines.len() > 15 && lines.iter().all(|line| line.chars().count() <= 80), "{drawn}");
    }
}
