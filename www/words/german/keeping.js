// German for designs: their steps, the shelf, links, comparing.

/** @type {Record<string, string>} */
export const KEEPING = {
  // compare/comparing.js
  "“{0}” cannot be compared: {1} Your design is as it was.":
    "„{0}“ lässt sich nicht vergleichen: {1} Der Entwurf ist unverändert.",
  // compare/panel.js
  "Design file to compare with": "Entwurfsdatei zum Vergleichen",
  "Hold a saved design beside this one: a friend's of the same case, or your own from last week. Your design stays as it is.":
    "Einen gesicherten Entwurf neben diesen halten: den eines Freundes für dasselbe Gehäuse oder den eigenen von letzter Woche. Der Entwurf hier bleibt, wie er ist.",
  "From": "Von",
  "to the design here.": "zum Entwurf hier.",
  "Compare with a design file…": "Mit einer Entwurfsdatei vergleichen…",
  "Another file…": "Andere Datei…",
  "Take its ports, keep my shape": "Ihre Anschlüsse übernehmen, eigene Form behalten",
  "Stop comparing": "Vergleich beenden",
  "Nothing differs.": "Kein Unterschied.",
  "Fittings that differ": "Verschraubungen, die sich unterscheiden",
  "Keep-outs that differ": "Sperrzonen, die sich unterscheiden",
  "The rest": "Das Übrige",
  "Ports that differ": "Anschlüsse, die sich unterscheiden",
  "Port": "Anschluss",
  "Moved": "Verschoben",
  "mm": "mm",
  "x, y, z": "x, y, z",
  "Turned": "Verdreht",
  "Runs that differ": "Leitungen, die sich unterscheiden",
  "Run": "Leitung",
  "Length there": "Länge dort",
  "Length here": "Länge hier",
  "Change": "Änderung",
  "Mass change": "Änderung der Masse",
  "g": "g",
  "All runs made": "Alle machbaren Leitungen",
  "was": "vorher",
  "only here": "nur hier",
  "only there": "nur dort",
  // compare/told.js
  "added": "hinzugefügt",
  "removed": "entfernt",
  "moved {0} mm ({1}){2}": "um {0} mm verschoben ({1}){2}",
  ", with its port": ", mit ihrem Anschluss",
  "another kind": "andere Art",
  "under 0.01": "unter 0,01",
  "yes": "ja",
  "no": "nein",
  // design/fresh.js
  "fitting": "Verschraubung",
  "port": "Anschluss",
  "{0} to {1}": "{0} bis {1}",
  "run": "Leitung",
  "part": "Bauteil",
  // design/open.js
  "It is {0} MB; {1} is never over {2} MB. Choose a design saved by this page (.json), or a 3MF file of it.":
    "Sie hat {0} MB; {1} hat nie mehr als {2} MB. Einen von dieser Seite gesicherten Entwurf (.json) oder eine 3MF-Datei davon wählen.",
  "an archive": "ein Archiv",
  "a design": "ein Entwurf",
  "It is empty. Choose a design saved by this page (.json).":
    "Sie ist leer. Einen von dieser Seite gesicherten Entwurf (.json) wählen.",
  // design/step-name.js
  "fittings": "Verschraubungen",
  "ports": "Anschlüsse",
  "runs": "Leitungen",
  "keep-out": "Sperrzone",
  "keep-outs": "Sperrzonen",
  "a change back": "Änderung zurück",
  "name {0}": "Name {0}",
  "{0} and more": "{0} und mehr",
  "add the {0} {1}": "{0} {1} hinzufügen",
  "remove the {0} {1}": "{0} {1} entfernen",
  "the {0}": "{0}",
  "order of the {0}": "Reihenfolge: {0}",
  "the design's name": "Name des Entwurfs",
  "{0} of {1}": "{0} von {1}",
  "without a name": "ohne Namen",
  // keep/begin.js
  "This browser does not let the page keep anything, so save your design as a file before you leave.":
    "Dieser Browser lässt die Seite nichts aufbewahren: den Entwurf vor dem Verlassen als Datei sichern.",
  "A design kept from last time could not be read. It is set aside, unchanged: under “Designs” it can be saved as a file.":
    "Ein beim letzten Mal aufbewahrter Entwurf war nicht zu lesen. Er ist unverändert beiseitegelegt: unter „Entwürfe“ lässt er sich als Datei sichern.",
  // keep/dialog.js
  "Designs in this browser": "Entwürfe in diesem Browser",
  "They are kept on this machine, in this browser, and sent nowhere. Who clears the browser's data clears them, so save them all in one file now and then.":
    "Sie liegen auf diesem Rechner, in diesem Browser, und werden nirgendwohin gesendet. Wer die Daten des Browsers löscht, löscht auch sie; darum ab und zu alle in einer Datei sichern.",
  "Save all in one file": "Alle in einer Datei sichern",
  "Take designs from a file…": "Entwürfe aus einer Datei holen…",
  "File of designs to take": "Datei mit Entwürfen",
  "Set aside": "Beiseitegelegt",
  "What was kept here and could not be read. It is never deleted; as a file it may be mended by hand.":
    "Was hier aufbewahrt war und nicht zu lesen ist. Es wird nie gelöscht; als Datei lässt es sich vielleicht von Hand richten.",
  "Save it as a file": "Als Datei sichern",
  "what was set aside {0}": ": beiseitegelegt {0}",
  "{0}, changed {1}{2}": "{0}, geändert {1}{2}",
  "run|runs": "Leitung|Leitungen",
  ", as it was started": ", wie begonnen",
  "On the page": "Auf der Seite",
  "Open": "Öffnen",
  "Remove": "Entfernen",
  "at a time that is not known": "zu unbekannter Zeit",
  // keep/keeping.js
  "The browser's storage is full: your last changes are not kept if you leave. Save the design as a file, or remove designs that you no longer need under “Designs”.":
    "Der Speicher des Browsers ist voll: die letzten Änderungen gehen beim Verlassen verloren. Den Entwurf als Datei sichern oder unter „Entwürfe“ entfernen, was nicht mehr gebraucht wird.",
  "The browser does not let this page keep anything: your last changes are not kept if you leave. Save the design as a file.":
    "Der Browser lässt diese Seite nichts aufbewahren: die letzten Änderungen gehen beim Verlassen verloren. Den Entwurf als Datei sichern.",
  "That design is no longer there, or could not be read. What could not be read is set aside under “Designs”, never deleted.":
    "Dieser Entwurf ist nicht mehr da oder war nicht zu lesen. Was nicht zu lesen war, liegt beiseite unter „Entwürfe“ und wird nie gelöscht.",
  "{0} (copy)": "{0} (Kopie)",
  "{0} was removed from this browser.": "{0} wurde aus diesem Browser entfernt.",
  "Put it back": "Zurückholen",
  "it has parts that this page does not know.": "er hat Teile, die diese Seite nicht kennt.",
  "number {0}": "Nummer {0}",
  "Another tab changed this design as well. Nothing was overwritten: this tab goes on with a copy of its own, and both stand under “Designs”.":
    "Ein anderer Tab hat diesen Entwurf auch geändert. Nichts wurde überschrieben: dieser Tab macht mit einer eigenen Kopie weiter, beide stehen unter „Entwürfe“.",
  "This design was just changed in another tab. What you change here from now on is kept as a copy beside it.":
    "Dieser Entwurf wurde eben in einem anderen Tab geändert. Was ab jetzt hier geändert wird, bleibt als Kopie daneben.",
  "Show the other tab's": "Den des anderen Tabs zeigen",
  "what another tab changed": "Änderung aus einem anderen Tab",
  "A design without a name": "Ein Entwurf ohne Namen",
  // share/code.js
  "The link as a QR code": "Der Link als QR-Code",
  // share/dialog.js
  "Share this design": "Diesen Entwurf teilen",
  "The link holds the whole design, every name and note in it too: who has the link can read them. Opening it sends nothing to a server, since everything after the # stays in the browser. It opens beside what your friend works on and replaces nothing.":
    "Der Link enthält den ganzen Entwurf, auch jeden Namen und jede Notiz darin: wer den Link hat, kann sie lesen. Beim Öffnen wird nichts an einen Server gesendet, denn alles nach dem # bleibt im Browser. Er öffnet sich neben dem, woran der Empfänger arbeitet, und ersetzt nichts.",
  "The link": "Der Link",
  "Copy the link": "Link kopieren",
  "Making the link…": "Link wird erzeugt…",
  "For the phone at the bench, point its camera here:":
    "Für das Telefon an der Werkbank die Kamera hierauf richten:",
  "The design is too large for a QR code that a camera could read; send the link instead.":
    "Der Entwurf ist zu groß für einen QR-Code, den eine Kamera lesen könnte; stattdessen den Link senden.",
  // share/fragment.js
  "the link was made by a newer page. Reload this one, or ask for the design as a file.":
    "der Link stammt von einer neueren Seite. Diese neu laden oder um den Entwurf als Datei bitten.",
  "the link is too long to be one of this page's.":
    "der Link ist zu lang, um von dieser Seite zu stammen.",
  "what is in the link is larger than any design.":
    "was im Link steckt, ist größer als jeder Entwurf.",
  "the link is not whole. It was cut short or changed on its way; ask for it again, or for the design as a file.":
    "der Link ist nicht vollständig. Er wurde unterwegs abgeschnitten oder verändert; noch einmal darum bitten, oder um den Entwurf als Datei.",
  "the link holds letters that no link of this page has.":
    "der Link enthält Zeichen, die kein Link dieser Seite hat.",
  // share/sharing.js
  "This page was opened from a disk: put this behind your friend's address of Tubewright.":
    "Diese Seite wurde von einem Datenträger geöffnet: dies hinter die Tubewright-Adresse des Empfängers setzen.",
  "No link was made: {0}": "Es wurde kein Link erzeugt: {0}",
  "Copied.": "Kopiert.",
  "The browser does not let the page copy: the link is marked, copy it yourself.":
    "Der Browser lässt die Seite nicht kopieren: der Link ist markiert und lässt sich von Hand kopieren.",
  "It has {0} characters.": "Er hat {0} Zeichen.",
  "This design is too large for a link ({0} characters, {1} at most). Save it as a file and send that.":
    "Dieser Entwurf ist zu groß für einen Link ({0} Zeichen, höchstens {1}). Als Datei sichern und diese senden.",
  "{0} Some programs cut links of this length; if it does not arrive whole, send the design as a file.":
    "{0} Manche Programme schneiden Links dieser Länge ab; kommt er nicht vollständig an, den Entwurf als Datei senden.",
};
