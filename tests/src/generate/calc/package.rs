//! What the package says of itself.

use super::AddIn;

/// A text in XML.
pub(super) fn escaped(text: &str) -> String {
    let text = text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
    text.replace('"', "&quot;")
}

/// One package per platform: the native library is inside.
pub(super) fn description(add_in: &AddIn) -> String {
    format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <!-- Made by the generator of the add-in; do not edit. -->\n\
         <description xmlns=\"http://openoffice.org/extensions/description/2006\">\n \
         <identifier value=\"org.overslab.{}\"/>\n <version value=\"{}\"/>\n \
         <platform value=\"linux_x86_64\"/>\n \
         <display-name><name lang=\"en\">{}</name></display-name>\n</description>\n",
        add_in.module,
        env!("CARGO_PKG_VERSION"),
        escaped(add_in.title)
    )
}

pub(super) fn manifest() -> String {
    const FILES: [(&str, &str); 3] = [
        ("XOverslab.rdb", "application/vnd.sun.star.uno-typelibrary;type=RDB"),
        ("overslab_addin.py", "application/vnd.sun.star.uno-component;type=Python"),
        ("CalcAddIn.xcu", "application/vnd.sun.star.configuration-data"),
    ];
    let entry = |(path, kind): &(&str, &str)| {
        format!(" <manifest:file-entry manifest:full-path=\"{path}\" manifest:media-type=\"{kind}\"/>\n")
    };
    let entries: String = FILES.iter().map(entry).collect();
    format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <!-- Made by the generator of the add-in; do not edit. -->\n\
         <manifest:manifest xmlns:manifest=\"http://openoffice.org/2001/manifest\">\n{entries}</manifest:manifest>\n"
    )
}
