/** The item in the status bar's language list: whether the server runs, and what it found. */
import { type Disposable, Disposable as Disposables, type Event, LanguageStatusSeverity, languages } from 'vscode';
import { type BaseLanguageClient, State } from 'vscode-languageclient';
import type { CheckedNotification } from './requests.ts';
import { l10n } from './words.ts';

/** Keeps the item in step with the server's state and its last check. */
export function registerStatus(client: BaseLanguageClient, onChecked: Event<CheckedNotification>): Disposable {
  const item = languages.createLanguageStatusItem('handtight.status', { language: 'rebuild' });
  item.name = 'Handtight';
  item.text = l10n.t('Handtight');
  item.command = { command: 'handtight.showOutput', title: l10n.t('Show output') };
  const state = client.onDidChangeState(({ newState }) => {
    item.busy = newState === State.Starting;
    if (newState === State.Stopped) {
      item.severity = LanguageStatusSeverity.Error;
      item.detail = l10n.t('The language server has stopped: nothing is checked.');
      item.command = { command: 'handtight.restartServer', title: l10n.t('Restart') };
    } else {
      item.severity = LanguageStatusSeverity.Information;
      item.detail = newState === State.Starting ? l10n.t('Starting') : '';
      item.command = { command: 'handtight.showOutput', title: l10n.t('Show output') };
    }
  });
  const checked = onChecked(({ files, errors, warnings }) => {
    item.severity = errors > 0 ? LanguageStatusSeverity.Warning : LanguageStatusSeverity.Information;
    item.detail = l10n.t('Files checked: {0}, errors: {1}, warnings: {2}', files, errors, warnings);
  });
  return Disposables.from(item, state, checked);
}
