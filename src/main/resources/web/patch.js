"use strict";
// hx-swap="patch": a part of the page becomes what the workroom answered by changing only what differs. What she holds, has
// typed, opened or scrolled stays as it is, drawings and their patterns that did not change are not drawn anew, and pictures to
// choose by come when there is time for them.
(() => {
  const IDLE_MS = 800; // after the last change, so that quick presses are not held up (common sense, no source)
  const FIELDS = "input:not([type=hidden]), select, textarea";
  let sent = null, idle = new Map(), timer = 0;

  document.addEventListener("htmx:configRequest", event => {
    // A section that asks shows its answer whole, so that a field whose words were refused is told so.
    const held = [...event.detail.target.querySelectorAll("[data-held]")].filter(section => !section.contains(event.detail.elt))
      .map(section => section.dataset.held);
    if (held.length) event.detail.headers.Held = held.join(" ");
  });
  document.addEventListener("htmx:beforeSwap", event => { sent = event.detail.requestConfig.formData; });

  const fetchIdle = () => {
    const shown = idle;
    idle = new Map();
    shown.forEach((from, picture) => { if (picture.isConnected) picture.setAttribute("src", from); });
  };
  const later = (picture, from) => {
    idle.set(picture, from);
    clearTimeout(timer);
    timer = setTimeout(fetchIdle, IDLE_MS);
  };

  // A field in which she is writing something else than what was sent keeps her words.
  const isTyped = field => field.value !== field.defaultValue && !(sent && sent.get(field.name) === field.value);
  const chosen = select => [...select.options].filter(option => option.defaultSelected).map(option => option.value).join();

  // True where the part asks something of the workroom in another way than before.
  const attributes = (old, now) => {
    let isOther = false;
    const isOpen = name => name === "open" && old.localName === "details";
    for (const { name } of [...old.attributes]) {
      if (now.hasAttribute(name) || isOpen(name)) continue;
      old.removeAttribute(name);
      isOther ||= name.startsWith("hx-");
    }
    for (const { name, value } of now.attributes) {
      if (old.getAttribute(name) === value || isOpen(name)) continue;
      if (name === "src" && old.hasAttribute("data-idle")) later(old, value);
      else old.setAttribute(name, value);
      isOther ||= name.startsWith("hx-");
    }
    return isOther;
  };

  const isAlike = (old, now) => old.nodeType === now.nodeType && old.nodeName === now.nodeName && (old.id || "") === (now.id || "")
    && !(now.nodeType === Node.ELEMENT_NODE && now.hasAttribute("data-anew"));

  // A section that is the same was not sent again; its forms are of the version that came.
  const holding = section => {
    const version = section.closest("[data-version]");
    section.querySelectorAll("input[name=version]").forEach(field => { field.value = version.dataset.version; });
  };

  // What is new or asks something of the workroom in another way is told, so that it is listened to.
  const patch = (old, now, told) => {
    if (old.nodeType !== Node.ELEMENT_NODE) {
      if (old.data !== now.data) old.data = now.data;
      return;
    }
    if (old.dataset.held && old.dataset.held === now.dataset.held) {
      holding(old);
      return;
    }
    if (old.isEqualNode(now) && !old.matches(FIELDS) && !old.querySelector(FIELDS)) return;
    const field = old.localName;
    const typed = (field === "input" || field === "textarea") && isTyped(old);
    const was = field === "select" ? chosen(old) : "";
    if (attributes(old, now)) told.push(old);
    children(old, now, told);
    if (field === "input" && !typed && old.value !== now.value) old.value = now.value;
    if (field === "input" && old.checked !== now.checked) old.checked = now.checked;
    if (field === "select" && (chosen(old) !== was || (sent && sent.has(old.name)))) old.value = now.value;
  };

  const children = (old, now, told) => {
    const named = new Map([...old.children].filter(child => child.id).map(child => [child.id, child]));
    let at = old.firstChild;
    for (const next of [...now.childNodes]) {
      const twin = next.id ? named.get(next.id) : at;
      if (twin && isAlike(twin, next)) {
        if (twin === at) at = at.nextSibling;
        else old.insertBefore(twin, at);
        patch(twin, next, told);
        continue;
      }
      // What stands here is another thing: it gives way, unless its turn comes later.
      const isGiving = at && !(at.id && now.querySelector("#" + CSS.escape(at.id)));
      if (isGiving) {
        const gone = at;
        at = at.nextSibling;
        old.replaceChild(next, gone);
      } else old.insertBefore(next, at);
      if (next.nodeType === Node.ELEMENT_NODE) told.push(next);
    }
    while (at) {
      const gone = at;
      at = at.nextSibling;
      gone.remove();
    }
  };

  window.htmx.defineExtension("patch", {
    handleSwap: (style, target, fragment) => {
      if (style !== "patch") return false;
      const now = [...fragment.children].find(one => one.id === target.id) || fragment.firstElementChild;
      if (!now) return false;
      const told = [];
      if (isAlike(target, now)) patch(target, now, told);
      else {
        target.replaceWith(now);
        told.push(now);
      }
      return told;
    }
  });
})();
