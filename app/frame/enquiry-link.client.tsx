"use client";

import Link from "next/link";
import { usePathname, useRouter } from "next/navigation";
import { useEffect } from "react";

/** The key that opens the question from every screen, with Ctrl, or ⌘ on a Mac: it types nothing into any field. */
const KEY = "k";

/** The way to an enquiry, at the head of every screen. Where the question is open already, its first field takes the focus. */
export function EnquiryLink() {
  const path = usePathname();
  const router = useRouter();
  useEffect(() => {
    const open = (event: KeyboardEvent) => {
      const isOurs = (event.ctrlKey || event.metaKey) && !event.shiftKey && !event.altKey;
      if (!isOurs || event.key.toLowerCase() !== KEY) return;
      event.preventDefault();
      const count = document.getElementById("stemCount");
      if (path === "/enquiry" && count instanceof HTMLInputElement) {
        count.focus();
        count.select();
      } else router.push("/enquiry");
    };
    window.addEventListener("keydown", open);
    return () => window.removeEventListener("keydown", open);
  }, [path, router]);
  return (
    <Link
      className="enquiry-link"
      href="/enquiry"
      prefetch={false}
      aria-current={path === "/enquiry" ? "page" : undefined}
      aria-keyshortcuts="Control+K Meta+K"
    >
      Enquiry <kbd>Ctrl K</kbd>
    </Link>
  );
}
