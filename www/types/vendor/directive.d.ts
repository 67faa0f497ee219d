export * from 'lit-html/directive.js';
