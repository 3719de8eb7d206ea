import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { read } from '../../../bot/language/read.js';
import { agentScope } from '../../../bot/slack/agent.js';
import { commandNames } from '../../../bot/slack/commands.js';
import { homeEvent } from '../../../bot/slack/home.js';
import { mentionEvent } from '../../../bot/slack/mentions.js';
import { messageEvent } from '../../../bot/slack/messages.js';
import { peopleScope } from '../../../bot/slack/people.js';
import { shortcutNames } from '../../../bot/slack/shortcuts.js';
import { pieces } from '../../../core/index.js';

const manifest = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../manifest-example/${name}`, import.meta.url), 'utf8'));

type Command = { command: string; description: string; usage_hint: string; should_escape: boolean; url?: string };

describe.each(['manifest.json', 'manifest-http.json'])('%s', (name) => {
  const { display_information, features, oauth_config, settings } = manifest(name);
  const commands: Command[] = features.slash_commands;
  const shortcuts: Record<'type' | 'name' | 'callback_id' | 'description', string>[] = features.shortcuts;

  test('names the commands that the code hears, and no other', () => {
    expect(commands.map(({ command }) => command).sort()).toEqual([...commandNames].sort());
  });

  test('subscribes to the events that the code hears, and no other', () => {
    const heard = [homeEvent, mentionEvent, `${messageEvent.type}.${messageEvent.channelType}`];
    expect(settings.event_subscriptions.bot_events.toSorted()).toEqual(heard.toSorted());
  });

  test('asks for the scopes that those commands, events and posts need, and no other', () => {
    expect(oauth_config).toEqual({
      scopes: { bot: ['app_mentions:read', agentScope, 'chat:write', 'commands', 'im:history', peopleScope] },
    });
  });

  test('names the shortcuts that the code hears, and no other, within the lengths that Slack allows', () => {
    expect(shortcuts.map(({ type, callback_id }) => [type, callback_id])).toEqual([
      ['message', shortcutNames.size],
      ['global', shortcutNames.gauge],
    ]);
    for (const { name, description } of shortcuts) {
      expect(name.length).toBeLessThanOrEqual(24);
      expect(description.length).toBeLessThanOrEqual(150);
    }
  });

  test('shows an agent whose prompts can be read', () => {
    const { agent_description, suggested_prompts } = features.agent_view;
    expect(agent_description.length).toBeLessThanOrEqual(300);
    expect(suggested_prompts.length).toBeLessThanOrEqual(4);
    const context = { pieces, units: undefined, machines: [], yarns: [], holes: [] };
    for (const { message } of suggested_prompts as { message: string }[])
      expect(read(message, context).meanings.map(({ kind }) => kind)).not.toContain('unread');
    expect(features).not.toHaveProperty('assistant_view');
  });

  test('lets people open Home, write direct messages and press buttons', () => {
    expect(features.app_home).toEqual({
      home_tab_enabled: true,
      messages_tab_enabled: true,
      messages_tab_read_only_enabled: false,
    });
    expect(settings.interactivity.is_enabled).toBe(true);
  });

  test('keeps the lengths that Slack allows', () => {
    const { name: title, description, long_description } = display_information;
    expect(title.length).toBeLessThanOrEqual(35);
    expect(description.length).toBeLessThanOrEqual(140);
    expect(long_description.length).toBeGreaterThanOrEqual(175);
    expect(long_description.length).toBeLessThanOrEqual(4000);
    expect(features.bot_user.display_name.length).toBeLessThanOrEqual(80);
    for (const { command, description: says, usage_hint } of commands) {
      expect(command.length).toBeLessThanOrEqual(32);
      expect(says.length).toBeLessThanOrEqual(2000);
      expect(usage_hint.length).toBeLessThanOrEqual(1000);
    }
  });

  test('has Slack escape mentions and links in commands, as the reading of them expects', () => {
    expect(commands.filter(({ should_escape }) => !should_escape)).toEqual([]);
  });
});

test('the HTTP manifest is the other one with request urls in place of Socket Mode', () => {
  const url = 'https://walewright.example.com/slack/events';
  const expected = manifest('manifest.json');
  for (const command of expected.features.slash_commands) command.url = url;
  expected.settings.event_subscriptions.request_url = url;
  expected.settings.interactivity.request_url = url;
  expected.settings.socket_mode_enabled = false;
  expect(manifest('manifest-http.json')).toEqual(expected);
});
