// What the build writes in front of sw.js.

/** Print of everything in the site. */
declare const VERSION: string;
/** Every file that the page needs, by its address from the site's own. */
declare const FILES: string[];
