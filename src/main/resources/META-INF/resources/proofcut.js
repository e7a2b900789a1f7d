// The keypad on the page: types into the field it stands beside, or the one last touched there.
// Without this script the keypad stays hidden and the tablet's own keys are used.
(() => {
  "use strict";
  const fieldOf = (keypad) => {
    const scope = keypad.closest("form, .question") || document;
    const fields = [...scope.querySelectorAll("input[data-keys]")];
    return fields.find((field) => field === scope.lastKeyed) || fields[0];
  };

  const type = (field, key) => {
    const from = field.selectionStart ?? field.value.length;
    const to = field.selectionEnd ?? from;
    if (key === "back") {
      field.setRangeText("", from === to ? Math.max(0, from - 1) : from, to, "end");
    } else {
      field.setRangeText(key, from, to, "end");
    }
    field.dispatchEvent(new Event("input", { bubbles: true }));
  };

  const show = (root) => {
    for (const keypad of root.querySelectorAll(".keypad[hidden]")) {
      if (fieldOf(keypad)) keypad.hidden = false;
    }
  };

  document.addEventListener("focusin", (event) => {
    if (event.target.matches("input[data-keys]")) {
      const scope = event.target.closest("form, .question") || document;
      scope.lastKeyed = event.target;
    }
  });
  document.addEventListener("pointerdown", (event) => {
    // The field keeps its caret while keys are tapped.
    if (event.target.closest(".key")) event.preventDefault();
  });
  document.addEventListener("click", (event) => {
    const key = event.target.closest(".key");
    const field = key && fieldOf(key.closest(".keypad"));
    if (field) type(field, key.dataset.key);
  });
  document.addEventListener("htmx:load", (event) => show(event.target));
  show(document);
})();
