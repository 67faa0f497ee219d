//! The page as one single file, `tubewright.html`, that does everything from a disk: scripts, styles, mark and engine within.

use crate::{install, place, tree};
use anyhow::{Context, Result};
use flate2::Compression;
use flate2::write::GzEncoder;
use sha2::{Digest, Sha256};
use std::fs;
use std::io::Write;
use std::path::Path;

/// Its name in the site.
pub const NAME: &str = "tubewright.html";

/// Writes it into the folder of a site that is whole but for it.
pub fn write(site: &Path) -> Result<()> {
    let list = place::at("crate/xtask/node");
    let modules = install::npm_in_target(&list, "build")?;
    let scripts = place::target("single");
    tree::remove(&scripts)?;
    let bundle = install::node().args([list.join("bundle.mjs"), modules, site.to_owned()]);
    bundle.args([place::at("www/single/home.js"), scripts.clone()]).quietly()?;
    let read = |path: &Path| fs::read(path).with_context(|| format!("no {}", path.display()));
    let text = |path: &Path| String::from_utf8(read(path)?).context("a script that is no UTF-8");
    let page = closed(text(&scripts.join("page.js"))?);
    let thread = closed(text(&scripts.join("thread.js"))?);
    let index = text(&site.join("index.html"))?;
    let styles = links(&index, "stylesheet").map(|file| text(&site.join(file))).collect::<Result<Vec<_>>>()?.concat();
    let engine = base64(&gzip(&read(&site.join("engine_bg.wasm"))?)?);
    let mark = base64(&read(&site.join("mark.svg"))?);
    let html = html(&index, &Parts { page, thread, styles, engine, mark });
    fs::write(site.join(NAME), html)?;
    Ok(())
}

struct Parts {
    page: String,
    thread: String,
    styles: String,
    engine: String,
    mark: String,
}

/// The page's own markup with everything that it names put into it. Scripts and styles are let in by their prints; the
/// parts are data, which no browser runs.
fn html(index: &str, parts: &Parts) -> String {
    let policy = format!(
        "default-src 'none'; script-src 'sha256-{}' 'wasm-unsafe-eval'; style-src 'sha256-{}'; img-src data:; \
         worker-src blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; \
         trusted-types lit-html tubewright",
        print(&parts.page),
        print(&parts.styles)
    );
    let mut head = String::new();
    let body = index.find("<body>").unwrap_or(index.len());
    for line in index[..body].lines() {
        let kept = !["<link ", "<script ", "<!-- Every module", "</head>"].iter().any(|start| line.starts_with(start));
        if line.starts_with("<meta http-equiv=\"Content-Security-Policy\"") {
            head.push_str(&format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">\n"));
        } else if kept {
            head.push_str(line);
            head.push('\n');
        }
    }
    let icon = format!("<link rel=\"icon\" href=\"data:image/svg+xml;base64,{}\">", parts.mark);
    let data = [("engine", &parts.engine), ("mark", &parts.mark), ("thread", &parts.thread)]
        .map(|(name, text)| format!("<script type=\"application/octet-stream\" id=\"part-{name}\">{text}</script>\n"));
    let body = index[body..].replace("</body>", &format!("{}<script>{}</script>\n</body>", data.concat(), parts.page));
    format!("{head}{icon}\n<style>{}</style>\n</head>\n{body}", parts.styles)
}

/// What the links of a kind name, in order.
fn links<'a>(index: &'a str, kind: &str) -> impl Iterator<Item = &'a str> {
    let start = format!("<link rel=\"{kind}\" href=\"");
    index.lines().filter_map(move |line| line.strip_prefix(&start)?.split('"').next())
}

/// A script that can stand between tags: nothing in it ends them, or opens a comment.
fn closed(script: String) -> String {
    script.replace("</script", "<\\/script").replace("<!--", "<\\!--")
}

fn print(text: &str) -> String {
    base64(&Sha256::digest(text.as_bytes()))
}

fn gzip(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut packed = GzEncoder::new(Vec::new(), Compression::best());
    packed.write_all(bytes)?;
    Ok(packed.finish()?)
}

/// RFC 4648, section 4.
fn base64(bytes: &[u8]) -> String {
    const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for three in bytes.chunks(3) {
        let bits = three.iter().fold(0u32, |bits, byte| bits << 8 | u32::from(*byte)) << (8 * (3 - three.len()));
        for place in 0..4 {
            let letter = if place <= three.len() { LETTERS[(bits >> (18 - 6 * place) & 63) as usize] } else { b'=' };
            text.push(char::from(letter));
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The test vectors of RFC 4648, section 10.
    #[test]
    fn base64_is_the_standards() {
        let vectors =
            [("", ""), ("f", "Zg=="), ("fo", "Zm8="), ("foo", "Zm9v"), ("foob", "Zm9vYg=="), ("foobar", "Zm9vYmFy")];
        for (plain, coded) in vectors {
            assert_eq!(base64(plain.as_bytes()), coded);
        }
    }

    #[test]
    fn nothing_in_a_script_ends_it() {
        assert_eq!(closed("a('</script><!--')".to_owned()), "a('<\\/script><\\!--')");
    }

    #[test]
    fn the_page_in_one_file_names_no_other() {
        let index = "<!doctype html>\n<html>\n<head>\n<meta http-equiv=\"Content-Security-Policy\" content=\"x\">\n\
                     <link rel=\"stylesheet\" href=\"a.css\">\n<script type=\"module\" src=\"main.js\"></script>\n</head>\n<body>\n</body>\n</html>\n";
        assert_eq!(links(index, "stylesheet").collect::<Vec<_>>(), ["a.css"]);
        let of = |text: &str| text.to_owned();
        let parts =
            Parts { page: of("go()"), thread: of("work()"), styles: of("p{}"), engine: of("AA"), mark: of("BB") };
        let html = html(index, &parts);
        assert!(!html.contains("src=\"") && !html.contains("a.css"), "{html}");
        // sha256 of "go()" as `printf 'go()' | openssl dgst -sha256 -binary | base64` gives it.
        assert!(html.contains("'sha256-5KYv+PUboo5h+0+YAtGRPbwv5d/QxzHslP4YGnUaxRw='"), "{html}");
    }
}
