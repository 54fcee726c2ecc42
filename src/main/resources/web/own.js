"use strict";
// What the pages need beyond plain forms. Everything else is drawn and decided by the workroom itself.

// Proves to the workroom that a change came from one of its own pages.
document.addEventListener("htmx:configRequest", event => {
  event.detail.headers["X-Token"] = document.querySelector("meta[name=token]").content;
});

// A choice that changes which fields there are loads the page anew.
document.addEventListener("change", event => {
  const to = event.target.dataset && event.target.dataset.reload;
  if (to) window.location.assign(to);
});

// A form that asks before it does what cannot be taken back.
document.addEventListener("submit", event => {
  const question = event.target.dataset && event.target.dataset.ask;
  if (question && !window.confirm(question)) event.preventDefault();
});

// Keys of one letter or sign: U takes back, 1 to 9 go to a cloth of the gallery; others belong to the page that has them.
// A device on which they are in the way turns them off in the Drawer.
(() => {
  const kept = what => { try { return what(window.localStorage); } catch (closed) { return null; } };
  const isOff = () => kept(own => own.getItem("keys")) === "off";
  const isTyped = at => at.closest && at.closest("input:not([type=checkbox]):not([type=radio]):not([type=hidden]), select, textarea");
  document.addEventListener("keydown", event => {
    if (event.key.length !== 1 || event.key === " " || event.ctrlKey || event.altKey || event.metaKey || isTyped(event.target)) return;
    if (isOff()) {
      event.stopImmediatePropagation();
      return;
    }
    if (event.repeat) return;
    if (event.key === "u" || event.key === "U") {
      const undo = document.getElementById("undo");
      if (undo && !undo.disabled && undo.getAttribute("aria-disabled") !== "true") { event.preventDefault(); undo.click(); }
    }
    const take = /^[1-9]$/.test(event.key) && document.querySelectorAll(".proposal:not(.looked) form button")[Number(event.key) - 1];
    if (take) {
      take.focus();
      take.scrollIntoView({ block: "nearest" });
    }
  }, true);
  const box = document.querySelector("[data-keys]");
  if (box) {
    box.closest("[hidden]").hidden = false;
    box.checked = !isOff();
    box.addEventListener("change", () => kept(own => box.checked ? own.removeItem("keys") : own.setItem("keys", "off")));
  }
})();

// A picture that is chosen is sent at once.
document.addEventListener("change", event => {
  if (event.target.matches && event.target.matches("input[type=file][data-at-once]")) event.target.form.requestSubmit();
});

// When the workroom is closed or out of reach, say so where it is seen and heard.
document.addEventListener("htmx:sendError", () => {
  const said = document.getElementById("said");
  said.innerHTML = "";
  const line = document.createElement("p");
  line.className = "note trouble";
  line.textContent = document.body.dataset.silent;
  said.append(line);
});

// Prints the page as it is.
document.addEventListener("click", event => {
  if (event.target.closest && event.target.closest("[data-print]")) window.print();
});

// One thing after another: what is asked for while an answer is under way waits for its turn and is asked then, with what
// stood in its fields when she pressed, even where the answer has meanwhile put another button in the place of hers.
(() => {
  // What follows a swap (focus, place, handles) happens in the same breath, so that nothing can come between.
  window.htmx.config.defaultSettleDelay = 0;

  // What the page knows of the work's state is always taken from the page as it is when a turn comes.
  const STATE = ["version", "label"];
  const SOON_MS = 400, TAP_MS = 300; // a wait worth telling; a tap's click comes within that (common sense, no source)
  const waiting = [];
  let current = null, issuing = null, leaving = false, pressed = false, tap = 0, late = 0;
  const held = [];

  const told = document.createElement("p");
  told.id = "waiting";
  told.className = "waiting";
  told.setAttribute("role", "status");
  document.getElementById("main").append(told);
  const say = document.body.dataset;
  const tell = () => {
    clearTimeout(late);
    const show = () => {
      const more = waiting.length;
      told.textContent = !current ? "" : more === 0 ? say.keeping : more === 1 ? say.keepingOne : say.keepingMore.replace("%d", more);
    };
    if (current && !waiting.length && !told.textContent) late = setTimeout(show, SOON_MS);
    else show();
  };

  // An answer that comes while a finger is down waits until it is lifted: a tap must find under it what it began on.
  const free = () => {
    clearTimeout(tap);
    pressed = false;
    while (held.length) held.shift()();
  };
  const whenFree = act => { if (pressed) held.push(act); else act(); };
  document.addEventListener("pointerdown", () => { clearTimeout(tap); pressed = true; }, true);
  ["pointerup", "pointercancel"].forEach(end => document.addEventListener(end, () => { clearTimeout(tap); tap = setTimeout(free, TAP_MS); }, true));
  document.addEventListener("click", () => { clearTimeout(tap); tap = setTimeout(free, 0); }, true);
  window.addEventListener("blur", free);

  const given = (elt, event, etc) => {
    const values = {};
    const add = (name, value) => { if (!STATE.includes(name)) (values[name] = values[name] || []).push(value); };
    if (elt.matches("form")) {
      new FormData(elt).forEach((value, name) => add(name, value));
      const by = event && event.submitter;
      if (by && by.name) add(by.name, by.value);
    }
    Object.entries(etc.values || {}).forEach(([name, value]) => { if (!STATE.includes(name)) values[name] = [value]; });
    return values;
  };
  const near = (elt, name) => { const from = elt.closest("[" + name + "]"); return from ? from.getAttribute(name) : undefined; };
  const same = (a, b) => a && a.values && a.path === b.path && JSON.stringify(a.values) === JSON.stringify(b.values);
  const isFollowing = elt => /^every/.test(near(elt, "hx-trigger") || "");
  const isOwn = elt => isFollowing(elt) || /^load/.test(near(elt, "hx-trigger") || "") || /replace/.test(near(elt, "hx-sync") || "");

  document.addEventListener("htmx:confirm", event => {
    const { elt, verb, path, etc, target, triggeringEvent, issueRequest } = event.detail;
    if (issuing) {
      etc.turn = issuing;
      return;
    }
    const isLooking = verb === "get" && triggeringEvent && !["click", "submit"].includes(triggeringEvent.type);
    if (isLooking || isOwn(elt)) {
      if (current && isFollowing(elt)) event.preventDefault();
      return;
    }
    event.preventDefault();
    const turn = { elt, verb, path, etc, issueRequest, at: target.id, swap: etc.swapOverride || near(elt, "hx-swap"),
      push: near(elt, "hx-push-url"), values: given(elt, triggeringEvent, etc) };
    // Enter in a field is a change and then a submission of the same.
    const last = waiting[waiting.length - 1] || current;
    if (/change/.test(near(elt, "hx-trigger") || "") && same(last, turn)) return;
    waiting.push(turn);
    next();
  });

  const fresh = turn => {
    const place = document.getElementById(turn.at) || document.body;
    const values = { ...turn.values };
    STATE.forEach(name => {
      const now = [...document.querySelectorAll("form")].find(form => form.getAttribute("action") === turn.path)?.querySelector("[name=" + name + "]")
        || place.querySelector("[name=" + name + "]");
      if (now && turn.verb !== "get") values[name] = now.value;
    });
    return { place, values };
  };
  const next = () => {
    while (!current && !leaving && waiting.length) begin(waiting.shift());
    tell();
  };
  const begin = turn => {
    if (turn.leave) {
      leaving = turn.leave();
      return;
    }
    current = turn;
    issuing = turn;
    const { place, values } = fresh(turn);
    if (turn.elt.isConnected) {
      turn.etc.turn = turn;
      turn.etc.values = values;
      turn.issueRequest(true);
    } else {
      const twin = [...document.querySelectorAll("a[hx-get]")].find(link => link.getAttribute("hx-get") === turn.path);
      const asked = { source: turn.verb === "get" && twin ? twin : place, target: "#" + turn.at, swap: turn.swap, values, push: turn.push };
      window.htmx.ajax(turn.verb, turn.path, asked).catch(() => {});
    }
    issuing = null;
    if (!turn.isSent) current = null;
  };
  document.addEventListener("htmx:beforeSend", event => {
    const { xhr, etc, elt } = event.detail;
    const turn = etc.turn;
    const answered = xhr.onload;
    const done = () => {
      if (!turn || current !== turn) return;
      current = null;
      next();
    };
    if (turn) turn.isSent = true;
    xhr.onload = () => whenFree(() => {
      // What followed the work of another device has been overtaken where its place has meanwhile been drawn anew.
      if (!turn && isFollowing(elt) && !elt.isConnected) return;
      if (turn && xhr.getResponseHeader("HX-Redirect")) leaving = true;
      try { answered.call(xhr); } finally { done(); }
    });
    ["error", "abort", "timeout"].forEach(end => xhr.addEventListener(end, done));
  });

  // Nor does it come between a step and its answer, which would find its place gone.
  document.addEventListener("htmx:beforeSwap", event => {
    if (current && isFollowing(event.detail.requestConfig.elt)) event.detail.shouldSwap = false;
  });

  // A plain form or link that leads away waits too, so that what was asked before it is kept first.
  const isBusy = () => current || waiting.length;
  document.addEventListener("submit", event => {
    const form = event.target;
    if (!isBusy() || form.hasAttribute("hx-post") || form.hasAttribute("hx-get")) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const by = event.submitter;
    const twin = () => form.isConnected ? form : [...document.querySelectorAll("form")].find(one => one.action === form.action);
    waiting.push({ leave: () => { const now = twin(); if (now) now.requestSubmit(now === form ? by : undefined); return Boolean(now); } });
    tell();
  }, true);
  document.addEventListener("click", event => {
    const link = event.target.closest && event.target.closest("a[href]");
    const isPlain = link && link.origin === location.origin && !link.download && !link.target && !link.hasAttribute("hx-get") && !link.hash;
    if (!isBusy() || !isPlain || event.button || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    waiting.push({ leave: () => { location.assign(link.href); return true; } });
    tell();
  });

  // Focus, and what she is typing, survive a swap.
  let before = null;
  document.addEventListener("htmx:beforeSwap", event => {
    const part = event.detail.target;
    if (!event.detail.shouldSwap || !part || !part.querySelectorAll) return;
    const sent = event.detail.requestConfig.formData;
    const isTyped = field => field.id && field.type !== "hidden" && field.value !== field.defaultValue && sent.get(field.name) !== field.value;
    before = {
      held: part.contains(document.activeElement) ? document.activeElement : null, part: part.id,
      typed: [...part.querySelectorAll("input:not([type=radio]):not([type=checkbox]):not([type=file]), textarea")].filter(isTyped)
    };
  });
  document.addEventListener("htmx:afterSettle", () => {
    if (!before) return;
    const { held: was, part, typed } = before;
    before = null;
    typed.forEach(field => {
      const now = document.getElementById(field.id);
      if (now && now !== field && now.value === field.defaultValue) now.value = field.value;
    });
    if (!was || was.isConnected || document.activeElement !== document.body) return;
    let place = was.id ? document.getElementById(was.id) : null;
    place?.focus({ preventScroll: true });
    // What she held is gone or can no longer be pressed: the nearest that can, else the part itself.
    while (place && document.activeElement === document.body && place.id !== part) {
      place = place.parentElement;
      place?.querySelector("button:not([disabled]), a[href], input:not([type=hidden])")?.focus({ preventScroll: true });
    }
    const whole = document.getElementById(part);
    if (document.activeElement === document.body && whole) {
      if (!whole.hasAttribute("tabindex")) whole.setAttribute("tabindex", "-1");
      whole.focus({ preventScroll: true });
    }
  });
})();
