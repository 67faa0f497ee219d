// German for the page round the form, its start and its notices.

/** @type {Record<string, string>} */
export const PAGE = {
  // app.js
  "It was started anew and your design is as you left it.":
    "Er wurde neu gestartet, der Entwurf ist unverändert.",
  "Your design is kept as you left it; undo the last change, or change what it was about.":
    "Der Entwurf ist unverändert aufbewahrt; die letzte Änderung rückgängig machen oder das ändern, worum es darin ging.",
  "The engine stopped: {0}. {1}": "Der Rechenkern ist stehen geblieben: {0}. {1}",
  "The report is copied. It names the browser and what went wrong, and nothing of your design.":
    "Der Bericht ist kopiert. Er nennt den Browser und was schiefging, und nichts aus dem Entwurf.",
  "The browser does not let the page copy.": "Der Browser lässt die Seite nicht kopieren.",
  "Copy a report": "Bericht kopieren",
  // dialog.js
  "Close": "Schließen",
  // edits.js
  "mend “{0}”": "„{0}“ beheben",
  "The fix was not applied": "Die Abhilfe wurde nicht angewendet",
  "Nothing was changed": "Es wurde nichts geändert",
  "{0} was not cut: {1}": "{0} wurde nicht zerteilt: {1}",
  "no way was found.": "kein Weg gefunden.",
  "leave “{0}” whole": "„{0}“ ganz lassen",
  "cut “{0}”": "„{0}“ zerteilen",
  "{0} was not cut": "{0} wurde nicht zerteilt",
  "Undo: as it was before": "Rückgängig: wie zuvor",
  "{0} fits the printer whole.": "{0} passt ganz in den Drucker.",
  "{0} is cut into {1} pieces, the fewest that fit the printer.":
    "{0} ist in {1} Teilstücke zerteilt, die wenigsten, die in den Drucker passen.",
  // engine/home.js
  "the engine's file could not be read ({0})":
    "die Datei des Rechenkerns war nicht zu lesen ({0})",
  // engine/link.js
  "its thread could not be started": "sein Thread ließ sich nicht starten",
  "It was given up.": "Es wurde abgebrochen.",
  "it gave no answer for half a minute": "er gab eine halbe Minute lang keine Antwort",
  "The engine stopped before it was done. Try again.":
    "Der Rechenkern blieb stehen, bevor er fertig war. Noch einmal versuchen.",
  // engine/trusted.js
  "the picture is none": "das Bild ist keines",
  // failure.js
  "Tubewright could not start: {0}. Reload the page; if that does not help, a current browser with WebAssembly will, and so does allowing WebAssembly where it is switched off. Your kept designs are untouched.":
    "Tubewright konnte nicht starten: {0}. Seite neu laden; hilft das nicht, dann ein aktueller Browser mit WebAssembly, oder WebAssembly erlauben, wo es abgeschaltet ist. Die aufbewahrten Entwürfe sind unberührt.",
  "Reload the page": "Seite neu laden",
  "Save my designs as a file": "Meine Entwürfe als Datei sichern",
  "The report names the browser and what went wrong, and nothing of your designs.":
    "Der Bericht nennt den Browser und was schiefging, und nichts aus den Entwürfen.",
  "Copied": "Kopiert",
  // main.js
  "Tubewright is starting…": "Tubewright startet…",
  // notices.js
  "News": "Neuigkeiten",
  "Put this message away": "Diese Meldung wegräumen",
  // offline.js
  "A newer Tubewright is ready. Your designs stay as they are.":
    "Ein neueres Tubewright ist bereit. Die Entwürfe bleiben, wie sie sind.",
  "Load it now": "Jetzt laden",
  // opening.js
  "start from a blank design": "mit leerem Entwurf beginnen",
  "The demo": "Das Beispiel",
  "open the demo “{0}”": "Beispiel „{0}“ öffnen",
  "the link is not whole. Ask for it again, or for the design as a file.":
    "der Link ist nicht vollständig. Noch einmal darum bitten, oder um den Entwurf als Datei.",
  "The linked design": "Der verlinkte Entwurf",
  "open a linked design": "verlinkten Entwurf öffnen",
  "{0} of “{1}” is under “Designs” now.": "{0} aus „{1}“ steht jetzt unter „Entwürfe“.",
  "design|designs": "Entwurf|Entwürfe",
  "{0} of “{1}” are under “Designs” now.": "{0} aus „{1}“ stehen jetzt unter „Entwürfe“.",
  "Not taken: {0}": "Nicht übernommen: {0}",
  "open “{0}”": "„{0}“ öffnen",
  "{0} was not opened: {1} Your design is as it was.":
    "{0} wurde nicht geöffnet: {1} Der bisherige Entwurf ist unverändert.",
  // page.js
  "Leak test": "Dichtheit",
  "Preview": "Vorschau",
  "Result": "Ergebnis",
  "Loop": "Kreislauf",
  "Plots": "Diagramme",
  "What if": "Was wäre wenn",
  "Files": "Dateien",
  "Compare": "Vergleich",
  "system": "System",
  "light": "hell",
  "dark": "dunkel",
  "Skip to the form": "Zum Formular springen",
  "Skip to the result": "Zum Ergebnis springen",
  "See the result": "Zum Ergebnis",
  "In the answers": "In den Ergebnissen",
  "Nothing that you type leaves this machine: there is no account, no cookie, nothing is counted, and the page's own policy forbids it to ask anything of another place.":
    "Nichts, was hier eingegeben wird, verlässt diesen Rechner: es gibt kein Konto, keine Cookies, nichts wird gezählt, und die Seite verbietet sich selbst, anderswo etwas abzufragen.",
  "What the loop does": "Was der Kreislauf leistet",
  "A hint for the field that you are in stands here.":
    "Hier steht ein Hinweis zum Feld, in dem gerade geschrieben wird.",
  "Drop the design here to open it": "Entwurf hier ablegen, um ihn zu öffnen",
  "Tubewright": "Tubewright",
  "The design as a whole": "Der Entwurf als Ganzes",
  "Start from…": "Beginnen mit…",
  "Designs": "Entwürfe",
  "Save": "Sichern",
  "Share": "Teilen",
  "Theme: {0}": "Darstellung: {0}",
  "On this page": "Auf dieser Seite",
  "Start from": "Beginnen mit",
  "What you have now stays under “Designs”, and undo brings it back.":
    "Was jetzt da ist, bleibt unter „Entwürfe“, und Rückgängig holt es zurück.",
  "A blank design": "Einem leeren Entwurf",
  "Type in your own ports.": "Eigene Anschlüsse eingeben.",
  "A design file…": "Einer Entwurfsdatei…",
  "One that you saved before: the design (.json), or a 3MF file or archive that it went into. You can also drop it anywhere on the page.":
    "Einer zuvor gesicherten: der Entwurf (.json) oder eine 3MF-Datei oder ein Archiv, in dem er steckt. Sie lässt sich auch irgendwo auf der Seite ablegen.",
  "Design file to open": "Entwurfsdatei zum Öffnen",
  "Undo": "Rückgängig",
  "Nothing to undo": "Nichts rückgängig zu machen",
  "Redo": "Wiederholen",
  "Nothing to redo": "Nichts zu wiederholen",
  "Demo: {0}": "Beispiel: {0}",
  // welcome.js
  "From your ports to printed tubes": "Von den Anschlüssen zu gedruckten Rohren",
  "Put these steps away": "Diese Schritte wegräumen",
  "Where are your ports?": "Wo sind die Anschlüsse?",
  "Measure each threaded hole from one corner of the case, and say which fitting it carries.":
    "Jedes Gewindeloch von einer Ecke des Gehäuses aus messen und angeben, welche Verschraubung es trägt.",
  "To the ports": "Zu den Anschlüssen",
  "Which tube?": "Welches Rohr?",
  "Say which ports it joins, and give it corners, a coil or points where it needs them. What is found about it stands beside the form.":
    "Angeben, welche Anschlüsse es verbindet, und ihm Ecken, eine Wendel oder Punkte geben, wo es sie braucht. Die Befunde dazu stehen neben dem Formular.",
  "To the tubes": "Zu den Rohren",
  "Get the files.": "Die Dateien holen.",
  "For a print service or your own printer, with a sheet on how to finish, fit and test them.":
    "Für einen Druckdienst oder den eigenen Drucker, mit einem Blatt dazu, wie sie nachgearbeitet, eingepasst und geprüft werden.",
  "To the files": "Zu den Dateien",
  "The small tube here is a finished example: change it, or":
    "Das kleine Rohr hier ist ein fertiges Beispiel: es ändern oder",
  ". Everything stays on this machine. {0}": ". Alles bleibt auf diesem Rechner. {0}",
  // words/choice.js
  "The language stays as it is: changing it loads the page anew, and this browser does not let the page keep your design for that. Save it as a file first.":
    "Die Sprache bleibt, wie sie ist: sie zu wechseln lädt die Seite neu, und dieser Browser lässt die Seite den Entwurf dafür nicht aufbewahren. Ihn zuerst als Datei sichern.",
  "Language": "Sprache",
  // words/marks.js
  "Stop": "Stopp",
  "Care": "Warnung",
  "Note": "Hinweis",
  "Mend": "Beheben",
  "care|care": "Warnung|Warnungen",
  "mend|mend": "zu beheben|zu beheben",
  // words/refusal.js
  "{0} (at {1})": "{0} (bei {1})",
};
