export * from 'lit-html/directives/class-map.js';
