// Quicker hands on top of pages that work without this file: forms answered in place, a word before signing out,
// arrow keys from row to row, and a status that refreshes itself.
(() => {
  "use strict";
  const body = document.body;
  const heard = (words) => { const place = document.getElementById("heard"); if (place) place.textContent = words; };

  // --- staying signed in -------------------------------------------------------------------------------------------
  const idle = document.getElementById("idle");
  let until = Date.now() + Number(body.dataset.idle) * 1000;
  const alive = (seconds) => { until = Date.now() + seconds * 1000; };
  const stay = () => fetch("/stay", { method: "POST", body: new URLSearchParams({ csrf: body.dataset.csrf }) })
    .then((answer) => { if (answer.ok) { alive(900); idle.close(); heard("You stay signed in."); } else { idle.close(); until = Infinity; heard("You are signed out. Save as usual: you sign in once more and go on from there."); } });
  if (idle) {
    document.getElementById("idle-stay").addEventListener("click", stay);
    setInterval(() => {
      const left = Math.round((until - Date.now()) / 1000);
      if (left <= Number(body.dataset.warn) && left > 0 && !idle.open) idle.showModal();
      if (idle.open) document.getElementById("idle-left").textContent = String(Math.max(left, 0));
      if (left <= 0 && idle.open) { document.getElementById("idle-title").textContent = "You are signed out"; }
    }, 1000);
  }

  // --- forms of a row, answered in place ---------------------------------------------------------------------------
  const rowsOf = () => Array.from(document.querySelectorAll(".row[id]"));
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.closest("[data-inline]") || form.method !== "post" || event.defaultPrevented) return;
    event.preventDefault();
    const row = form.closest(".row[id]");
    const place = row ? rowsOf().indexOf(row) : -1;
    const sent = new URLSearchParams(new FormData(form, event.submitter));
    for (const button of form.querySelectorAll("button")) button.disabled = true;
    fetch(form.action, { method: "POST", body: sent }).then(async (answer) => {
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const fresh = page.getElementById("main");
      if (answer.status === 401) { // signed out meanwhile: the page that came carries the work along
        document.replaceChild(document.adoptNode(page.documentElement), document.documentElement);
        document.getElementById("main").focus();
        return;
      }
      if (!answer.ok || !fresh || !fresh.querySelector("[data-inline]")) {
        if (answer.ok) { location.assign(answer.url); return; }
        for (const button of form.querySelectorAll("button")) button.disabled = false;
        const said = document.createElement("p");
        said.className = "wrong"; said.setAttribute("role", "alert");
        said.textContent = (fresh && fresh.querySelector("p") || { textContent: "That did not work. Try again." }).textContent;
        form.prepend(said);
        return;
      }
      const done = fresh.querySelector(".done");
      if (done) done.removeAttribute("role"); // said once, below
      document.getElementById("main").replaceWith(fresh);
      alive(900);
      const again = row && document.getElementById(row.id);
      const next = again || rowsOf()[Math.min(place, rowsOf().length - 1)];
      if (next) { next.tabIndex = -1; next.focus(); } else { fresh.focus(); }
      heard(done ? done.textContent.trim() : "Done.");
    }).catch(() => form.submit());
  });

  // --- up and down from row to row, only while a row has the focus -------------------------------------------------
  document.addEventListener("keydown", (event) => {
    const row = document.activeElement && document.activeElement.closest(".row[id]");
    if (!row || !["ArrowDown", "ArrowUp"].includes(event.key) || /^(INPUT|SELECT|TEXTAREA)$/.test(document.activeElement.tagName)) return;
    const rows = rowsOf();
    const next = rows[rows.indexOf(row) + (event.key === "ArrowDown" ? 1 : -1)];
    if (!next) return;
    event.preventDefault(); next.tabIndex = -1; next.focus(); next.scrollIntoView({ block: "nearest" });
  });

  // --- a part of the page that asks again by itself ----------------------------------------------------------------
  const watch = document.querySelector("[data-watch]");
  if (watch) {
    let asks = 0;
    const ask = () => fetch(watch.dataset.watch).then(async (answer) => {
      if (answer.ok) {
        const fresh = new DOMParser().parseFromString(await answer.text(), "text/html").querySelector("[data-watch]");
        if (fresh && fresh.textContent !== watch.textContent) { watch.innerHTML = fresh.innerHTML; heard(watch.textContent.trim()); }
      }
      asks += 1;
      if (asks < 60) setTimeout(ask, 2000);
    }).catch(() => undefined);
    setTimeout(ask, 2000);
  }
})();
