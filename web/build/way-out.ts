/** Name of the script that stands beside the page. */
export const WAY_OUT_FILE = 'way-out.js';

/** How long the page may take to start before the way out is shown. Slow phones take a few seconds. [ms] */
const PATIENCE_MS = 15_000;

/**
 * A page whose script is missing, wrong or too new for the browser never starts, and the service worker may give it
 * again and again. This script, which needs no other and nothing new, then says how to get out: it puts away the kept
 * files of the page, never the yards, which stand in a storage of their own.
 */
export const WAY_OUT = `(function () {
  function show() {
    var app = document.getElementById('app');
    if (!app || app.querySelector('.shell') || document.getElementById('way-out')) return;
    var box = document.createElement('div');
    box.id = 'way-out';
    box.className = 'before-start';
    box.setAttribute('role', 'alert');
    var words = document.createElement('p');
    words.textContent = 'Shadewright does not start. Your yards are still kept in this browser: do not clear its ' +
      'site data, which would delete them.';
    var button = document.createElement('button');
    button.type = 'button';
    button.textContent = 'Fetch the page anew, keep the yards';
    button.onclick = anew;
    box.appendChild(words);
    box.appendChild(button);
    app.appendChild(box);
  }
  function anew() {
    var reload = function () { location.reload(); };
    var all = [];
    if ('caches' in window) all.push(caches.keys().then(function (names) {
      return Promise.all(names.map(function (name) {
        return name.indexOf('shadewright-') === 0 ? caches.delete(name) : false;
      }));
    }));
    if (navigator.serviceWorker) all.push(navigator.serviceWorker.getRegistrations().then(function (found) {
      return Promise.all(found.map(function (one) { return one.unregister(); }));
    }));
    Promise.all(all).then(reload, reload);
  }
  addEventListener('error', function (event) {
    if (event.target && event.target.tagName === 'SCRIPT') show();
  }, true);
  addEventListener('unhandledrejection', show);
  setTimeout(show, ${PATIENCE_MS});
})();
`;
