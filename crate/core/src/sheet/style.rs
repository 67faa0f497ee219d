//! How the sheet looks, on a screen and on A4.

pub(super) const STYLE: &str = "
@page { size: A4; margin: 14mm 13mm }
:root { color-scheme: light }
body { margin: 0 auto; max-width: 62rem; padding: 1.25rem; background: #fff; color: #1b2224;
  font: 0.94rem/1.45 system-ui, \"Segoe UI\", \"DejaVu Sans\", sans-serif }
h1 { margin: 0; font-size: 1.7rem; line-height: 1.2; border-top: 5px solid #874210; padding-top: 0.6rem; overflow-wrap: anywhere }
h1 + p { margin: 0.2rem 0 1rem; color: #4d5759 }
h2 { margin: 2rem 0 0.5rem; padding: 0.25rem 0.6rem; background: #f4e7db; color: #874210; font-size: 1.2rem }
h3 { margin: 1.3rem 0 0.3rem; font-size: 1rem }
p, ul, ol { margin: 0.35rem 0 }
li { margin: 0.2rem 0 }
.source { color: #4d5759; font-size: 0.88em }
.wide { overflow-x: auto; margin: 0.5rem 0 }
table { border-collapse: collapse; width: 100%; min-width: 36rem; font-size: 0.86em; font-variant-numeric: tabular-nums }
caption { text-align: start; font-weight: 600; padding: 0.3rem 0 }
th, td { text-align: start; vertical-align: top; padding: 0.25rem 0.45rem; border-bottom: 1px solid #cdd2ce; overflow-wrap: break-word }
thead th { border-bottom: 2px solid #737e7c; overflow-wrap: normal }
tbody th { font-weight: 600; min-width: 7rem }
tr[data-sum] > * { border-top: 2px solid #737e7c; font-weight: 600 }
tr[data-passed=\"false\"] > * { background: #fbe9e6 }
.stop, .care { border-inline-start: 6px solid; padding: 0.4rem 0.9rem; margin: 0.8rem 0 }
.stop { border-color: #9d1519; background: #fbe9e6 }
.care { border-color: #6f4b00; background: #f8efd6 }
.stop h2, .care h2 { margin: 0; padding: 0; background: none }
.stop h2 { color: #9d1519 }
.care h2 { color: #6f4b00 }
@media print {
  body { max-width: none; padding: 0; font-size: 9.5pt; -webkit-print-color-adjust: exact; print-color-adjust: exact }
  h2, h3, caption { break-after: avoid }
  tr, li { break-inside: avoid }
  .wide { overflow: visible }
  table { font-size: 7.4pt; min-width: 0 }
  th, td { padding-inline: 0.22rem }
  tbody th { min-width: 22mm; overflow-wrap: anywhere }
}
";
