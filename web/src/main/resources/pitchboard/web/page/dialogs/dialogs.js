/** What can lie over the page, by name. */
import { crewSheet } from './crew.js';
import { historySheet } from './history.js';
import { jobMenu } from './menu.js';
import { readerSheet } from './reader.js';
import { settingsSheet } from './settings.js';
import { sheetView } from './sheet.js';

export const dialogs = {
    crew: crewSheet,
    history: historySheet,
    'job-menu': jobMenu,
    reader: readerSheet,
    settings: settingsSheet,
    sheet: sheetView,
};
