/** By day or by night: as the device has it until somebody chooses. */
import { keepSetting } from './keep.js';
import { change } from './state.js';

const night = matchMedia('(prefers-color-scheme: dark)');
let wanted = 'system';

export function useTheme(theme) {
    wanted = theme;
    keepSetting('theme', theme);
    show();
}

function show() {
    const dark = wanted === 'dark' || (wanted === 'system' && night.matches);
    document.documentElement.dataset.theme = dark ? 'dark' : 'light';
    change({ theme: wanted });
}

night.addEventListener('change', show);
