"use strict";
// The fields move with what they measure, while she types.
document.addEventListener("htmx:afterSettle", () => {
  const places = (document.getElementById("drawing")?.dataset.places || "").split(";").filter(Boolean);
  document.querySelectorAll(".dim").forEach((dim, i) => { if (places[i]) dim.className = "dim " + places[i]; });
});

// The tie that is shown as chosen stays chosen when a size changes.
document.addEventListener("htmx:afterSettle", () => {
  const tie = document.querySelector(".answer [name=tie]");
  const kept = document.querySelector(".sized [name=tie]");
  if (tie && kept) kept.value = tie.value;
});
