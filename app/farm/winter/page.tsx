import { permanentRedirect } from "next/navigation";

/** The costs of the winter stand among the farm's figures. */
export default function WinterPage() {
  permanentRedirect("/farm#digging");
}
