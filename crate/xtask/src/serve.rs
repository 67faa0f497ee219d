//! The page's server for one's own machine: static files from `target/site/`, the headers a real host would send.

use crate::engine_module::Effort;
use crate::program::Program;
use crate::{place, site};
use anyhow::{Context, Result, bail};
use std::fs::File;
use std::io::ErrorKind;
use std::net::{Ipv4Addr, SocketAddr, TcpListener};
use std::path::{Component, Path, PathBuf};
use tiny_http::{Header, Method, Request, Response, Server};

/// What the page may do: load its own files, compile its own engine, keep pictures in memory; nothing else anywhere.
pub const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data: blob:; connect-src 'self'; worker-src 'self'; font-src 'self'; base-uri 'none'; \
    form-action 'none'; frame-ancestors 'none'";

const USUAL_PORT: u16 = 8080;

/// Builds unless told not to, then serves until it is ended.
pub fn serve(options: &[&str]) -> Result<()> {
    let (mut port, mut build, mut open) = (None, Some(Effort::Shipped), false);
    let mut left = options.iter();
    while let Some(option) = left.next() {
        match *option {
            "--no-build" => build = None,
            "--quick" => build = Some(Effort::Quick),
            "--open" => open = true,
            "--port" => {
                let number = left.next().context("--port needs a number")?;
                port = Some(number.parse().with_context(|| format!("`{number}` is no port number (0 to 65535)"))?);
            }
            other => bail!("serve does not know `{other}`; it knows --port N, --quick, --no-build, --open"),
        }
    }
    if let Some(effort) = build {
        site::build(effort)?;
    }
    let folder = place::site();
    if !folder.join("index.html").is_file() {
        bail!("{} holds no page; run `cargo xtask build`", folder.display());
    }
    let (server, address) = listen(port)?;
    let url = format!("http://{address}/");
    println!("Tubewright is at {url}  (end with Ctrl-C)");
    if open {
        Program::new("xdg-open", "open the address in a browser by hand").args([&url]).quietly()?;
    }
    // Four hands, so that one slow connection does not hold up the others.
    std::thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| server.incoming_requests().for_each(|request| answer(request, &folder)));
        }
    });
    Ok(())
}

fn listen(port: Option<u16>) -> Result<(Server, SocketAddr)> {
    let bind = |port| TcpListener::bind((Ipv4Addr::LOCALHOST, port));
    let listener = match (port, bind(port.unwrap_or(USUAL_PORT))) {
        (_, Ok(listener)) => listener,
        (None, Err(fault)) if fault.kind() == ErrorKind::AddrInUse => bind(0)?,
        (_, Err(fault)) => {
            let port = port.unwrap_or(USUAL_PORT);
            return Err(fault).with_context(|| format!("cannot listen on port {port}; name another with --port"));
        }
    };
    let address = listener.local_addr()?;
    let server = Server::from_listener(listener, None).map_err(|fault| anyhow::anyhow!("cannot serve: {fault}"))?;
    Ok((server, address))
}

fn answer(request: Request, folder: &Path) {
    let head = |name: &str, value: &str| Header::from_bytes(name, value).ok();
    let fixed = [
        ("Content-Security-Policy", POLICY),
        ("Cache-Control", "no-cache"),
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "no-referrer"),
        ("Cross-Origin-Opener-Policy", "same-origin"),
    ];
    let headers = fixed.into_iter().filter_map(|(name, value)| head(name, value));
    let plain = |status: u16, words: &str| {
        let kind = head("Content-Type", "text/plain; charset=utf-8");
        Response::from_string(words).with_status_code(status).with_header_option(kind).boxed()
    };
    let mut response = match (request.method(), file_for(request.url(), folder)) {
        (Method::Get | Method::Head, Some(path)) => match File::open(&path) {
            Ok(file) => Response::from_file(file).with_header_option(head("Content-Type", kind(&path))).boxed(),
            Err(_) => plain(404, "There is no such file.\n"),
        },
        (Method::Get | Method::Head, None) => plain(404, "There is no such file.\n"),
        _ => plain(405, "Only GET and HEAD are answered.\n"),
    };
    headers.for_each(|header| response.add_header(header));
    // A browser that has gone away is no fault of ours.
    request.respond(response).ok();
}

/// The file under `folder` that a request's address names, or none where it names anything else.
fn file_for(url: &str, folder: &Path) -> Option<PathBuf> {
    let path = url.split(['?', '#']).next()?.strip_prefix('/')?;
    let path = if path.is_empty() { "index.html" } else { path };
    // The site's own names need no escapes, so an escaped address names nothing here.
    let plain = path.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-_./".contains(&byte));
    let inner = Path::new(path);
    let inside = inner.components().all(|part| matches!(part, Component::Normal(_)));
    let file = folder.join(inner);
    (plain && inside && file.is_file()).then_some(file)
}

fn kind(path: &Path) -> &'static str {
    match path.extension().and_then(|end| end.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js" | "mjs") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("json") => "application/json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("webmanifest") => "application/manifest+json",
        Some("woff2") => "font/woff2",
        _ => "text/plain; charset=utf-8",
    }
}

trait HeaderOption {
    fn with_header_option(self, header: Option<Header>) -> Self;
}

impl<R: std::io::Read> HeaderOption for Response<R> {
    fn with_header_option(self, header: Option<Header>) -> Self {
        match header {
            Some(header) => self.with_header(header),
            None => self,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_files_of_the_site_are_named() {
        let folder = crate::place::at("crate/xtask");
        let names = |url: &str| file_for(url, &folder).is_some();
        assert!(names("/Cargo.toml") && names("/src/main.rs?v=1"));
        for outside in ["/../core/Cargo.toml", "/src/../../core/Cargo.toml", "//etc/passwd", "/%2e%2e/core/Cargo.toml"]
        {
            assert!(!names(outside), "{outside} must not be served");
        }
        assert!(!names("/src") && !names("Cargo.toml") && !names("/"), "a folder or nothing is no file");
    }
}
