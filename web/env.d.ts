/// <reference types="vite/client" />

/** True in the page that is one file: no service worker, no further files. */
declare const SINGLE_FILE: boolean;
