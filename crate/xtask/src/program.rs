//! Other programs: run them, and say plainly which one failed and what to install where it is missing.

use anyhow::{Context, Result, bail};
use std::ffi::OsStr;
use std::io::ErrorKind;
use std::path::Path;
use std::process::{Command, Output, Stdio};
use std::time::{Duration, Instant};

const LONGEST_LINE: usize = 160;

/// A call of another program.
pub struct Program {
    command: Command,
    install: String,
}

impl Program {
    /// `name` is looked up in PATH unless it is a path; `install` says how to get it.
    pub fn new(name: impl AsRef<OsStr>, install: &str) -> Self {
        Self { command: Command::new(name), install: install.to_string() }
    }

    /// An existing command, for its environment.
    pub fn of(command: Command, install: &str) -> Self {
        Self { command, install: install.to_string() }
    }

    /// Adds arguments.
    pub fn args<S: AsRef<OsStr>>(mut self, args: impl IntoIterator<Item = S>) -> Self {
        self.command.args(args);
        self
    }

    /// Sets the folder it runs in.
    pub fn within(mut self, folder: impl AsRef<Path>) -> Self {
        self.command.current_dir(folder);
        self
    }

    /// Sets a variable of its environment.
    pub fn env(mut self, key: &str, value: impl AsRef<OsStr>) -> Self {
        self.command.env(key, value);
        self
    }

    /// Runs it with its output passed on; an error when it does not end well.
    pub fn run(mut self) -> Result<()> {
        let line = self.line();
        let status = self.command.status().map_err(|fault| self.missing(fault))?;
        if !status.success() {
            bail!("`{line}` ended with {status}");
        }
        Ok(())
    }

    /// Runs it silently; its output is shown only when it does not end well.
    pub fn quietly(mut self) -> Result<String> {
        let line = self.line();
        let output = self.command.stdin(Stdio::null()).output().map_err(|fault| self.missing(fault))?;
        text(&line, output)
    }

    /// Runs it silently and ends it when it takes longer than `limit`.
    pub fn within_time(mut self, limit: Duration) -> Result<String> {
        let line = self.line();
        self.command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped());
        let mut child = self.command.spawn().map_err(|fault| self.missing(fault))?;
        let start = Instant::now();
        while child.try_wait()?.is_none() {
            if start.elapsed() > limit {
                child.kill().ok();
                child.wait().ok();
                bail!("`{line}` took longer than {} s", limit.as_secs());
            }
            std::thread::sleep(Duration::from_millis(50));
        }
        text(&line, child.wait_with_output()?)
    }

    fn line(&self) -> String {
        let path = Path::new(self.command.get_program());
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let args = self.command.get_args().map(|arg| arg.to_string_lossy().into_owned());
        let line = std::iter::once(name).chain(args).collect::<Vec<_>>().join(" ");
        // A list of files says nothing that the first of them does not.
        match line.char_indices().nth(LONGEST_LINE) {
            Some((end, _)) => format!("{} ...", &line[..end]),
            None => line,
        }
    }

    fn missing(&self, fault: std::io::Error) -> anyhow::Error {
        let line = self.line();
        match fault.kind() {
            ErrorKind::NotFound => anyhow::anyhow!("`{line}` could not be started: {}", self.install),
            _ => anyhow::Error::new(fault).context(format!("`{line}` could not be started")),
        }
    }
}

fn text(line: &str, output: Output) -> Result<String> {
    if !output.status.success() {
        let said = [output.stdout, output.stderr].concat();
        bail!("`{line}` ended with {}:\n{}", output.status, String::from_utf8_lossy(&said).trim());
    }
    String::from_utf8(output.stdout).with_context(|| format!("`{line}` did not answer in UTF-8"))
}

/// True when `name` is a program that can be started from PATH.
pub fn exists(name: &str) -> bool {
    std::env::var_os("PATH").is_some_and(|path| std::env::split_paths(&path).any(|folder| folder.join(name).is_file()))
}
