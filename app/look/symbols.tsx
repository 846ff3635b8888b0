/** Small drawings used on every page: a counted bloom and a ring for what is missing, a sign for each role, marks of state. Colours come in custom properties (`--f --e --v --eye --ring`), since selectors do not reach into `<use>`. */
export const Symbols = () => (
  <svg className="symbols" width="0" height="0" aria-hidden="true" focusable="false">
    <title>Drawings</title>
    <defs>
      <symbol id="bloom" viewBox="-4 -4 8 8" overflow="visible">
        <path
          className="pt"
          d="M0 -2.45Q1.52 -3.66 1.73 -1.73Q3.66 -1.52 2.45 0Q3.66 1.52 1.73 1.73Q1.52 3.66 0 2.45Q-1.52 3.66 -1.73 1.73Q-3.66 1.52 -2.45 0Q-3.66 -1.52 -1.73 -1.73Q-1.52 -3.66 0 -2.45Z"
        />
        <circle className="eye" r=".95" />
      </symbol>
      <symbol id="ring" viewBox="-4 -4 8 8" overflow="visible">
        <circle className="rg" r="2.75" />
      </symbol>
      <symbol id="r-focal" viewBox="-12 -12 24 24">
        <path
          className="pt"
          d="M0 -4.5C2 -6.45 2.1 -9.57 0.32 -10.74Q0 -11.32 -0.32 -10.74C-2.1 -9.57 -2 -6.45 0 -4.5ZM2.25 -3.9C4.96 -4.59 6.6 -7.24 5.65 -9.14Q5.66 -9.81 5.09 -9.46C2.97 -9.34 1.49 -6.59 2.25 -3.9ZM3.9 -2.25C6.59 -1.49 9.34 -2.97 9.46 -5.09Q9.81 -5.66 9.14 -5.65C7.24 -6.6 4.59 -4.96 3.9 -2.25ZM4.5 0C6.45 2 9.57 2.1 10.74 0.32Q11.33 0 10.74 -0.32C9.57 -2.1 6.45 -2 4.5 0ZM3.9 2.25C4.59 4.96 7.24 6.6 9.14 5.65Q9.81 5.66 9.46 5.09C9.34 2.97 6.59 1.49 3.9 2.25ZM2.25 3.9C1.49 6.59 2.97 9.34 5.09 9.46Q5.66 9.81 5.65 9.14C6.6 7.24 4.96 4.59 2.25 3.9ZM0 4.5C-2 6.45 -2.1 9.57 -0.32 10.74Q0 11.33 0.32 10.74C2.1 9.57 2 6.45 0 4.5ZM-2.25 3.9C-4.96 4.59 -6.6 7.24 -5.65 9.14Q-5.66 9.81 -5.09 9.46C-2.97 9.34 -1.49 6.59 -2.25 3.9ZM-3.9 2.25C-6.59 1.49 -9.34 2.97 -9.46 5.09Q-9.81 5.66 -9.14 5.65C-7.24 6.6 -4.59 4.96 -3.9 2.25ZM-4.5 0C-6.45 -2 -9.57 -2.1 -10.74 -0.32Q-11.32 0 -10.74 0.32C-9.57 2.1 -6.45 2 -4.5 0ZM-3.9 -2.25C-4.59 -4.96 -7.24 -6.6 -9.14 -5.65Q-9.81 -5.66 -9.46 -5.09C-9.34 -2.97 -6.59 -1.49 -3.9 -2.25ZM-2.25 -3.9C-1.49 -6.59 -2.97 -9.34 -5.09 -9.46Q-5.66 -9.81 -5.65 -9.14C-6.6 -7.24 -4.96 -4.59 -2.25 -3.9Z"
        />
        <path
          className="pt"
          d="M0.8 -2.47C3.11 -3.43 4 -5.86 2.7 -7.31Q2.56 -7.87 2.11 -7.5C0.21 -7.1 -0.5 -4.6 0.8 -2.47ZM2.1 -1.53C4.53 -0.94 6.68 -2.39 6.48 -4.33Q6.69 -4.86 6.12 -4.82C4.34 -5.62 2.3 -4.02 2.1 -1.53ZM2.6 0C4.22 1.9 6.81 1.99 7.78 0.31Q8.27 0 7.78 -0.31C6.81 -2 4.22 -1.9 2.6 0ZM2.1 1.53C2.3 4.02 4.34 5.62 6.12 4.82Q6.69 4.86 6.48 4.33C6.68 2.39 4.53 0.94 2.1 1.53ZM0.8 2.47C-0.5 4.6 0.21 7.1 2.11 7.5Q2.56 7.87 2.7 7.31C4 5.86 3.11 3.43 0.8 2.47ZM-0.8 2.47C-3.11 3.43 -4 5.86 -2.7 7.31Q-2.56 7.87 -2.11 7.5C-0.21 7.1 0.5 4.6 -0.8 2.47ZM-2.1 1.53C-4.53 0.94 -6.68 2.39 -6.48 4.33Q-6.69 4.86 -6.12 4.82C-4.34 5.62 -2.3 4.02 -2.1 1.53ZM-2.6 0C-4.22 -1.9 -6.81 -1.99 -7.78 -0.31Q-8.27 0 -7.78 0.31C-6.81 2 -4.22 1.9 -2.6 0ZM-2.1 -1.53C-2.3 -4.02 -4.34 -5.62 -6.12 -4.82Q-6.69 -4.86 -6.48 -4.33C-6.68 -2.39 -4.53 -0.94 -2.1 -1.53ZM-0.8 -2.47C0.5 -4.6 -0.21 -7.1 -2.11 -7.5Q-2.56 -7.87 -2.7 -7.31C-4 -5.86 -3.11 -3.43 -0.8 -2.47Z"
        />
        <path
          className="pt"
          d="M0 -1C1.5 -2.2 1.58 -4.12 0.24 -4.84Q0 -5.2 -0.24 -4.84C-1.58 -4.12 -1.5 -2.2 0 -1ZM0.78 -0.62C2.66 -0.2 4.2 -1.34 3.94 -2.83Q4.07 -3.24 3.63 -3.21C2.24 -3.8 0.78 -2.54 0.78 -0.62ZM0.97 0.22C1.81 1.95 3.67 2.45 4.66 1.31Q5.07 1.16 4.77 0.84C4.37 -0.62 2.48 -0.97 0.97 0.22ZM0.43 0.9C-0.4 2.63 0.37 4.4 1.88 4.47Q2.26 4.69 2.32 4.26C3.21 3.03 2.31 1.33 0.43 0.9ZM-0.43 0.9C-2.31 1.33 -3.21 3.03 -2.32 4.26Q-2.26 4.69 -1.88 4.47C-0.37 4.4 0.4 2.63 -0.43 0.9ZM-0.97 0.22C-2.48 -0.97 -4.37 -0.62 -4.77 0.84Q-5.07 1.16 -4.66 1.31C-3.67 2.45 -1.81 1.95 -0.97 0.22ZM-0.78 -0.62C-0.78 -2.54 -2.24 -3.8 -3.63 -3.21Q-4.07 -3.24 -3.94 -2.83C-4.2 -1.34 -2.66 -0.2 -0.78 -0.62Z"
        />
      </symbol>
      <symbol id="r-secondary" viewBox="-12 -12 24 24">
        <path
          className="pt"
          d="M0 -1C4.1 -3.88 4.31 -8.49 2.21 -10.22Q0 -11.08 -2.21 -10.22C-4.3 -8.49 -4.1 -3.88 0 -1ZM0.87 -0.5C5.41 1.61 9.5 -0.52 9.95 -3.19Q9.6 -5.54 7.74 -7.03C5.2 -7.97 1.31 -5.49 0.87 -0.5ZM0.87 0.5C1.31 5.49 5.2 7.97 7.74 7.03Q9.6 5.54 9.95 3.19C9.5 0.52 5.41 -1.61 0.87 0.5ZM0 1C-4.1 3.88 -4.3 8.49 -2.21 10.22Q0 11.08 2.21 10.22C4.31 8.49 4.1 3.88 0 1ZM-0.87 0.5C-5.41 -1.61 -9.5 0.52 -9.95 3.19Q-9.6 5.54 -7.74 7.03C-5.2 7.97 -1.31 5.49 -0.87 0.5ZM-0.87 -0.5C-1.31 -5.49 -5.2 -7.97 -7.74 -7.03Q-9.6 -5.54 -9.95 -3.19C-9.5 -0.52 -5.41 1.61 -0.87 -0.5Z"
        />
        <circle className="eye" r="2.3" />
      </symbol>
      <symbol id="r-line" viewBox="-12 -12 24 24">
        <path className="stem" d="M0 11.5V-10" />
        <circle className="pt" cx="-1.615" cy="-8.5" r="1.7" />
        <circle className="pt" cx="1.615" cy="-7.9" r="1.7" />
        <circle className="pt" cx="-2.09" cy="-5.2" r="2.2" />
        <circle className="pt" cx="2.09" cy="-4.6000000000000005" r="2.2" />
        <circle className="pt" cx="-2.565" cy="-1.6" r="2.7" />
        <circle className="pt" cx="2.565" cy="-1" r="2.7" />
        <circle className="pt" cx="-2.945" cy="2.4" r="3.1" />
        <circle className="pt" cx="2.945" cy="3" r="3.1" />
        <circle className="pt" cx="0" cy="-10.2" r="1.2" />
      </symbol>
      <symbol id="r-filler" viewBox="-12 -12 24 24">
        <path className="stem" d="M0 11.5V2M0 2L-7-5M0 2L-2.6-7.6M0 2L2.6-7.6M0 2L7-5" />
        <circle className="pt" cx="-8" cy="-5.5" r="1.75" />
        <circle className="pt" cx="-5.4" cy="-8" r="1.75" />
        <circle className="pt" cx="-2.6" cy="-9" r="1.75" />
        <circle className="pt" cx="0" cy="-9.8" r="1.75" />
        <circle className="pt" cx="2.6" cy="-9" r="1.75" />
        <circle className="pt" cx="5.4" cy="-8" r="1.75" />
        <circle className="pt" cx="8" cy="-5.5" r="1.75" />
        <circle className="pt" cx="-3.8" cy="-5.6" r="1.75" />
        <circle className="pt" cx="3.8" cy="-5.6" r="1.75" />
        <circle className="pt" cx="0" cy="-6.6" r="1.75" />
      </symbol>
      <symbol id="r-foliage" viewBox="-12 -12 24 24">
        <path className="stem" d="M0 11.5C0 5 .5-3 0-8" />
        <path className="pt" d="M0 -6.4C3.2 -8.6 2.2 -12.4 0 -14.2C-2.2 -12.4 -3.2 -8.6 0 -6.4Z" />
        <path className="pt" d="M1.41 -2.09C1.29 -6.17 -2.64 -7.44 -5.48 -6.52C-5.14 -3.55 -2.35 -0.51 1.41 -2.09Z" />
        <path className="pt" d="M-1.41 -2.09C2.35 -0.51 5.14 -3.55 5.48 -6.52C2.64 -7.44 -1.29 -6.17 -1.41 -2.09Z" />
        <path className="pt" d="M1.61 3.72C0.84 -0.48 -3.43 -1.19 -6.23 0.21C-5.41 3.23 -2.04 5.94 1.61 3.72Z" />
        <path className="pt" d="M-1.61 3.72C2.04 5.94 5.41 3.23 6.23 0.21C3.43 -1.19 -0.84 -0.48 -1.61 3.72Z" />
      </symbol>
      <symbol id="r-accent" viewBox="-12 -12 24 24">
        <path className="stem" d="M0 11.5C0 7-1 4-5-1M0 9C.5 4 1 0 1-5M0 9.5C2 6 4 4.5 6 2" />
        <circle className="pt" cx="-5.6" cy="-2.4" r="3" />
        <circle className="pt" cx="1.2" cy="-7.2" r="3.4" />
        <circle className="pt" cx="7" cy=".6" r="2.7" />
        <path className="stem" d="M-5.6-5.4v-1.6M1.2-10.6v-1.4M7-2.1v-1.5" />
      </symbol>
      <symbol id="m-tick" viewBox="0 0 16 16">
        <path
          d="M2.5 8.6l3.6 3.8L13.5 3.6"
          fill="none"
          stroke="currentColor"
          strokeWidth="2.4"
          strokeLinecap="round"
          strokeLinejoin="round"
        />
      </symbol>
      <symbol id="m-short" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="5.8" fill="none" stroke="currentColor" strokeWidth="2" strokeDasharray="3 2.1" />
      </symbol>
      <symbol id="m-risk" viewBox="0 0 16 16">
        <circle cx="8" cy="8" r="5.8" fill="none" stroke="currentColor" strokeWidth="2" />
        <path d="M8 2.2a5.8 5.8 0 0 0 0 11.6z" fill="currentColor" />
      </symbol>
      <symbol id="m-late" viewBox="0 0 16 16">
        <path
          d="M3 2h10M3 14h10M4 2c0 4 8 5 8 12M12 2c0 4-8 5-8 12"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.8"
          strokeLinecap="round"
        />
      </symbol>
      <g id="cell-bloom">
        <path
          className="pt"
          d="M0 -3.6Q2.03 -4.9 2.55 -2.55Q4.9 -2.03 3.6 0Q4.9 2.03 2.55 2.55Q2.03 4.9 0 3.6Q-2.03 4.9 -2.55 2.55Q-4.9 2.03 -3.6 0Q-4.9 -2.03 -2.55 -2.55Q-2.03 -4.9 0 -3.6Z"
        />
        <circle className="eye" r="1.25" />
      </g>
      <circle id="cell-ring-mark" className="rg" r="3.75" />
    </defs>
  </svg>
);
