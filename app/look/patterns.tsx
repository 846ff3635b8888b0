/** The patterns that bars of a flower colour carry, so that no two colours that lie on each other differ in hue alone; and the hatch of short weeks. */
export const Patterns = () => (
  <svg className="symbols" width="0" height="0" aria-hidden="true" focusable="false">
    <title>Drawings</title>
    <defs>
      <pattern id="p-cream" width="6" height="6" patternUnits="userSpaceOnUse">
        <rect width="6" height="6" fill="var(--f-cream)" />
        <path
          d="M3 0V6"
          fill="none"
          stroke="var(--f-cream-vein)"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.55"
        />
      </pattern>
      <pattern id="p-blush" width="6" height="6" patternUnits="userSpaceOnUse">
        <rect width="6" height="6" fill="var(--f-blush)" />
        <path
          d="M1.5 1.5h0M4.5 4.5h0"
          fill="none"
          stroke="var(--f-blush-vein)"
          strokeWidth="1.5"
          strokeLinecap="round"
          opacity="0.75"
        />
      </pattern>
      <pattern id="p-peach" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-peach)" />
        <path
          d="M-1 1L1 -1M-1 6L6 -1M4 6L6 4"
          fill="none"
          stroke="var(--f-peach-vein)"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.5"
        />
      </pattern>
      <pattern id="p-apricot" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-apricot)" />
        <path
          d="M-1 4L1 6M-1 -1L6 6M4 -1L6 1"
          fill="none"
          stroke="var(--f-apricot-vein)"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.55"
        />
      </pattern>
      <pattern id="p-silver" width="4" height="3" patternUnits="userSpaceOnUse">
        <rect width="4" height="3" fill="var(--f-silver)" />
        <path
          d="M0 1.5H4"
          fill="none"
          stroke="var(--f-silver-vein)"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.6"
        />
      </pattern>
      <pattern id="p-lavender" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-lavender)" />
        <path
          d="M0 2.5H5"
          fill="none"
          stroke="var(--f-lavender-vein)"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.55"
        />
      </pattern>
      <pattern id="p-coral" width="4" height="4" patternUnits="userSpaceOnUse">
        <rect width="4" height="4" fill="var(--f-coral)" />
        <path
          d="M1 1h0M3 3h0"
          fill="none"
          stroke="var(--f-coral-vein)"
          strokeWidth="1.3"
          strokeLinecap="round"
          opacity="0.8"
        />
      </pattern>
      <pattern id="p-red" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-red)" />
        <path
          d="M-1 4L1 6M-1 -1L6 6M4 -1L6 1"
          fill="none"
          stroke="#fff0e1"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.6"
        />
      </pattern>
      <pattern id="p-bronze" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-bronze)" />
        <path
          d="M-1 1L1 -1M-1 6L6 -1M4 6L6 4"
          fill="none"
          stroke="#fbe7c8"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.6"
        />
      </pattern>
      <pattern id="p-plum" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-plum)" />
        <path
          d="M-1 1L1 -1M-1 6L6 -1M4 6L6 4"
          fill="none"
          stroke="#fff0fa"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.5"
        />
      </pattern>
      <pattern id="p-purple" width="4" height="4" patternUnits="userSpaceOnUse">
        <rect width="4" height="4" fill="var(--f-purple)" />
        <path d="M2 0V4" fill="none" stroke="#fff0ff" strokeWidth="0.9" strokeLinecap="round" opacity="0.5" />
      </pattern>
      <pattern id="p-green" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--f-green)" />
        <path
          d="M2.5 0V5"
          fill="none"
          stroke="var(--f-green-vein)"
          strokeWidth="0.9"
          strokeLinecap="round"
          opacity="0.6"
        />
      </pattern>
      <pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse">
        <path d="M-1 6L6 -1M-1 1L1 -1M4 6L6 4" stroke="var(--short)" strokeWidth="1" fill="none" />
      </pattern>
    </defs>
  </svg>
);
