export * from 'lit-html/directives/unsafe-svg.js';
