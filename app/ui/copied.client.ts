"use client";

/** Puts a text where it can be pasted from; whether the browser let it. Over a line without a certificate browsers have only the older way, by a selection. */
export async function copied(text: string): Promise<boolean> {
  if (!navigator.clipboard) return copiedBySelection(text);
  return navigator.clipboard.writeText(text).then(
    () => true,
    () => false,
  );
}

function copiedBySelection(text: string): boolean {
  const field = document.createElement("textarea");
  field.value = text;
  field.className = "visually-hidden";
  document.body.append(field);
  field.select();
  const isCopied = document.execCommand("copy");
  field.remove();
  return isCopied;
}
