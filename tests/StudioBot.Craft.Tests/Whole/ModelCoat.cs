using StudioBot.Craft.Coats;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>A coat as <see cref="ReminderHistory"/> remembers it.</summary>
internal sealed class ModelCoat(PingSubject subject, RecoatWindow window)
{
    public PingSubject Subject { get; } = subject;

    public RecoatWindow Window { get; } = window;

    public bool IsUndone { get; set; }
}
