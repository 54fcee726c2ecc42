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

// When the workroom is closed or out of reach, say so where it is seen and heard.
document.addEventListener("htmx:sendError", () => {
  const said = document.getElementById("said");
  said.innerHTML = "";
  const line = document.createElement("p");
  line.className = "note trouble";
  line.textContent = "The workroom does not answer. Start Hearthcloth again; nothing that was kept is lost.";
  said.append(line);
});

// Prints the page as it is.
document.addEventListener("click", event => {
  if (event.target.closest && event.target.closest("[data-print]")) window.print();
});
