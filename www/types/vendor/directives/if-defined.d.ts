export * from 'lit-html/directives/if-defined.js';
