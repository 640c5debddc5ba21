/// <reference types="vite/client" />

/** True in the served build alone: the dev server and the page that is one file have no service worker beside them. */
declare const HAS_SERVICE_WORKER: boolean;
