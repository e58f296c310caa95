using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>A piece as <see cref="ReminderHistory"/> remembers it.</summary>
internal sealed class ModelPiece(int number, DateTimeOffset readyAt)
{
    public PingSubject Subject { get; } = new(PingSubjectKind.Piece, number);

    public DateTimeOffset ReadyAt { get; set; } = readyAt;

    public DateTimeOffset? NotBefore { get; set; }

    public WhyUnwanted? Gone { get; set; }

    public int Estimates { get; set; }

    public List<ModelCoat> Coats { get; } = [];

    public bool IsCoated => Coats.Exists(coat => !coat.IsUndone);
}
